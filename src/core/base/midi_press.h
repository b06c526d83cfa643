// SPDX-License-Identifier: GPL-3.0-or-later
// A MIDI message read as what a switch does: it goes down, comes up, or says both at once.
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
    int number = 0;  ///< 0…127, as it stands in the message
    int channel = 1; ///< 1…16
    bool operator==(const MidiSwitch&) const = default;

    /// "midi note 60 ch 1", "midi cc 64 ch 1", "midi program 5 ch 16".
    [[nodiscard]] std::string text() const;
    /// Nothing for any other text.
    [[nodiscard]] static std::optional<MidiSwitch> named(std::string_view text);
    /// One number for each switch, from 0.
    [[nodiscard]] int code() const;
};

struct MidiPress {
    /// A note on (with a velocity) and a controller from 64 up are down; a note off and a controller below 64
    /// are up. A program change has no end: it is a tap.
    enum class Way : std::uint8_t { down, up, tap };
    MidiSwitch which;
    Way way = Way::down;
    bool operator==(const MidiPress&) const = default;
};

/// Reads one whole message, status byte first. Nothing for what no switch sends, and for what is no message.
[[nodiscard]] std::optional<MidiPress> midiPress(std::span<const std::uint8_t> message);

} // namespace piolo
