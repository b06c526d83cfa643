// SPDX-License-Identifier: GPL-3.0-or-later
// Interprets a MIDI message as the action of a switch: pressed, released, or both at once.
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace piolo {

/// One switch of a MIDI controller.
struct MidiSwitch {
    enum class Kind : std::uint8_t { note, controller, program };
    Kind kind = Kind::controller;
    int number = 0;  ///< 0…127, as in the message
    int channel = 1; ///< 1…16
    bool operator==(const MidiSwitch&) const = default;

    /// "midi note 60 ch 1", "midi cc 64 ch 1", "midi program 5 ch 16".
    [[nodiscard]] std::string text() const;
    /// The inverse of text(); nothing for any other text.
    [[nodiscard]] static std::optional<MidiSwitch> named(std::string_view text);
    /// A unique number for each switch, starting at 0.
    [[nodiscard]] int code() const;
};

struct MidiPress {
    /// Down: a note-on (with a velocity) or a controller value of 64 or more. Up: a note-off or a controller
    /// value below 64. A program change has no release: it is a tap.
    enum class Way : std::uint8_t { down, up, tap };
    MidiSwitch which;
    Way way = Way::down;
    bool operator==(const MidiPress&) const = default;
};

/// Reads one complete message, starting with the status byte. Nothing for messages that no switch sends, and
/// for invalid ones.
[[nodiscard]] std::optional<MidiPress> midiPress(std::span<const std::uint8_t> message);

} // namespace piolo
