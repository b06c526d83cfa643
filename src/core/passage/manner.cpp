// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/passage/manner.h"

#include "core/base/value_names.h"

namespace piolo {

namespace {

// Each name is at the index of its value.
constexpr std::array<std::string_view, articulationCount> articulations{
    "written", "slurred", "tongued", "staccato", "twoAndTwo", "threeAndOne", "oneAndThree", "doubleTongued"};
constexpr std::array<std::string_view, 4> rhythms{"written", "dotted", "reversed", "groups"};

} // namespace

std::string_view nameOf(Articulation articulation) noexcept { return at(articulations, articulation); }

std::optional<Articulation> articulationNamed(std::string_view name) noexcept {
    return named<Articulation>(articulations, name);
}

std::string_view nameOf(Rhythm rhythm) noexcept { return at(rhythms, rhythm); }

std::optional<Rhythm> rhythmNamed(std::string_view name) noexcept { return named<Rhythm>(rhythms, name); }

} // namespace piolo
