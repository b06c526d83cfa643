// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/music/tonic.h"

#include "core/music/spelling.h"

#include <array>
#include <utility>

namespace piolo {

namespace {

constexpr std::array<std::pair<std::string_view, int>, 8> signs{
    {{"", 0}, {"b", -1}, {"#", 1}, {" flat", -1}, {" sharp", 1}, {" natural", 0}, {"♭", -1}, {"♯", 1}}};

} // namespace

int pitchClass(Tonic tonic) noexcept { return midiNumber({tonic.step, tonic.alter, 4}) % semitonesOfOctave; }

std::string textOf(Tonic tonic) {
    constexpr std::array<const char*, 3> suffixes{"b", "", "#"};
    return tonic.step + std::string(suffixes[static_cast<std::size_t>(tonic.alter + 1)]);
}

std::string spoken(Tonic tonic) {
    constexpr std::array<const char*, 3> suffixes{" flat", "", " sharp"};
    return tonic.step + std::string(suffixes[static_cast<std::size_t>(tonic.alter + 1)]);
}

std::optional<Tonic> tonicNamed(std::string_view text) noexcept {
    if (text.empty()) return std::nullopt;
    const char letter = text.front();
    const bool isSmall = letter >= 'a' && letter <= 'g';
    if (!isSmall && (letter < 'A' || letter > 'G')) return std::nullopt;
    const char step = isSmall ? static_cast<char>(letter - 'a' + 'A') : letter;
    for (const auto& [sign, alter] : signs)
        if (text.substr(1) == sign) return Tonic{step, static_cast<std::int8_t>(alter)};
    return std::nullopt;
}

} // namespace piolo
