// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/manner.h"

#include <algorithm>

namespace piolo {

namespace {

// Each word stands at the place of its value.
constexpr std::array<std::string_view, articulationCount> articulations{
    "written", "slurred", "tongued", "staccato", "twoAndTwo", "threeAndOne", "oneAndThree", "doubleTongued"};
constexpr std::array<std::string_view, 4> rhythms{"written", "dotted", "reversed", "groups"};

template <typename Value, std::size_t Count>
std::optional<Value> valueOf(const std::array<std::string_view, Count>& words, std::string_view word) {
    const auto found = std::find(words.begin(), words.end(), word);
    if (found == words.end()) return std::nullopt;
    return static_cast<Value>(found - words.begin());
}

} // namespace

std::string_view nameOf(Articulation articulation) noexcept {
    return articulations[static_cast<std::size_t>(articulation)];
}

std::optional<Articulation> articulationNamed(std::string_view name) noexcept {
    return valueOf<Articulation>(articulations, name);
}

std::string_view nameOf(Rhythm rhythm) noexcept { return rhythms[static_cast<std::size_t>(rhythm)]; }

std::optional<Rhythm> rhythmNamed(std::string_view name) noexcept { return valueOf<Rhythm>(rhythms, name); }

} // namespace piolo
