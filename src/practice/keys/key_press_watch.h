// SPDX-License-Identifier: GPL-3.0-or-later
// Tells a press that the player meant from a held key's repeats and a pedal's bouncing contact.
#pragma once

#include <cstdint>
#include <optional>
#include <unordered_map>

namespace piolo::practice {

/// Plain values: keys by their code, moments in the event's own milliseconds.
class KeyPressWatch {
public:
    /// A contact that closes again within so many milliseconds has bounced: no player presses twice so fast.
    void setBounce(std::int64_t millis) { bounce_ = millis; }

    /// True when the press counts. A window system may tell a held key as presses and releases at the same
    /// moment: those do not count either.
    bool pressed(int key, std::int64_t millis);
    void released(int key, std::int64_t millis);
    /// The window lost the keyboard: what was held is forgotten.
    void forget();

private:
    struct Contact {
        bool down = false;
        std::optional<std::int64_t> released;
    };
    std::int64_t bounce_ = 30;
    std::unordered_map<int, Contact> contacts_;
};

} // namespace piolo::practice
