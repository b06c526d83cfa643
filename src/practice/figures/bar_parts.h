// SPDX-License-Identifier: GPL-3.0-or-later
// The smaller passages that are made of a passage's bars.
#pragma once

#include "core/rule/build_up.h"

#include <cstdint>
#include <string>
#include <vector>

namespace piolo::practice {

/// Longer passages are not built up bar by bar.
inline constexpr std::int32_t mostBarsToBuildUp = 8;

/// A passage of these bars of `whole`, by that name: its tempi, its click and how it is played; it is linked
/// to `whole`. Its id is still to come.
[[nodiscard]] Passage passageOfBars(const Passage& whole, const BuildUpPart& part, std::string name);
/// The parts to build `whole` up from its last bar, the whole left out. None for a passage that is too long,
/// too short or open-ended.
[[nodiscard]] std::vector<BuildUpPart> partsFromTheEnd(const Music& whole);
/// Parts of two bars (of four when there are more than eight, of one when there are two), each landing on the
/// beat with which the next begins. None for a passage of one bar, of more than 32, or an open-ended one.
[[nodiscard]] std::vector<BuildUpPart> partsThatOverlap(const Music& whole);

} // namespace piolo::practice
