// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/midi_press.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <utility>

namespace piolo {

namespace {

using Kind = MidiSwitch::Kind;
using Way = MidiPress::Way;

constexpr std::array<std::pair<Kind, std::string_view>, 3> kinds{
    {{Kind::note, "note"}, {Kind::controller, "cc"}, {Kind::program, "program"}}};
constexpr int downFrom = 64;

bool isData(std::uint8_t byte) { return byte < 0x80; }

/// Removes `word` and a space from the front.
bool takeWord(std::string_view& text, std::string_view word) {
    const bool there = text.starts_with(word) && text.substr(word.size()).starts_with(' ');
    if (there) text.remove_prefix(word.size() + 1);
    return there;
}

/// Removes a number without leading zeros from the front.
std::optional<int> takeNumber(std::string_view& text, int least, int most) {
    int number = -1;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    const auto size = static_cast<std::size_t>(end - text.data());
    if (error != std::errc{} || number < least || number > most || std::to_string(number).size() != size)
        return std::nullopt;
    text.remove_prefix(size);
    return number;
}

} // namespace

std::string MidiSwitch::text() const {
    const auto* const found =
        std::find_if(kinds.begin(), kinds.end(), [&](const auto& named) { return named.first == kind; });
    return "midi " + std::string(found->second) + ' ' + std::to_string(number) + " ch " +
           std::to_string(channel);
}

std::optional<MidiSwitch> MidiSwitch::named(std::string_view text) {
    if (!takeWord(text, "midi")) return std::nullopt;
    for (const auto& [kind, word] : kinds) {
        if (!takeWord(text, word)) continue;
        const auto number = takeNumber(text, 0, 127);
        if (!number || !text.starts_with(" ch ")) return std::nullopt;
        text.remove_prefix(4);
        const auto channel = takeNumber(text, 1, 16);
        if (!channel || !text.empty()) return std::nullopt;
        return MidiSwitch{kind, *number, *channel};
    }
    return std::nullopt;
}

int MidiSwitch::code() const { return (static_cast<int>(kind) * 128 + number) * 16 + channel - 1; }

std::optional<MidiPress> midiPress(std::span<const std::uint8_t> message) {
    if (message.size() < 2 || !std::all_of(message.begin() + 1, message.end(), isData)) return std::nullopt;
    const int channel = (message[0] & 0x0F) + 1;
    const int status = message[0] & 0xF0;
    const int number = message[1];
    if (status == 0xC0 && message.size() == 2) return MidiPress{{Kind::program, number, channel}, Way::tap};
    if (message.size() != 3) return std::nullopt;
    const int value = message[2];
    switch (status) {
    case 0x80:
        return MidiPress{{Kind::note, number, channel}, Way::up};
    case 0x90:
        return MidiPress{{Kind::note, number, channel}, value > 0 ? Way::down : Way::up};
    case 0xB0:
        return MidiPress{{Kind::controller, number, channel}, value >= downFrom ? Way::down : Way::up};
    default:
        return std::nullopt;
    }
}

} // namespace piolo
