// SPDX-License-Identifier: GPL-3.0-or-later
// Distinguishes intended presses from key repeats and the bouncing contact of a pedal.
#pragma once

#include <cstdint>
#include <optional>
#include <unordered_map>

namespace piolo::practice {

/// Plain values: keys by their code, times in the event's own milliseconds.
class KeyPressWatch {
public:
    /// A contact that closes again within this many milliseconds has bounced: no player presses twice that
    /// fast.
    void setBounce(std::int64_t millis) { bounce_ = millis; }

    /// True if the press counts. A window system may report a held key as releases and presses at the same
    /// moment; these do not count, either.
    bool pressed(int key, std::int64_t millis);
    void released(int key, std::int64_t millis);
    /// The window lost the keyboard: held keys are forgotten.
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
