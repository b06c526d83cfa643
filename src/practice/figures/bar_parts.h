// SPDX-License-Identifier: GPL-3.0-or-later
// The smaller passages that can be made from a passage's bars.
#pragma once

#include "core/rule/build_up.h"

#include <cstdint>
#include <string>
#include <vector>

namespace piolo::practice {

/// Longer passages are not built up bar by bar.
inline constexpr std::int32_t mostBarsToBuildUp = 8;

/// A passage of these bars of `whole` with that name: with its tempi, click and manner, and linked to
/// `whole`. Its id is not set yet.
[[nodiscard]] Passage passageOfBars(const Passage& whole, const BuildUpPart& part, std::string name);
/// The parts for building up `whole` from its last bar, without the whole itself. Empty for a passage that is
/// too long, too short or open-ended.
[[nodiscard]] std::vector<BuildUpPart> partsFromTheEnd(const Music& whole);
/// Parts of two bars (of four if there are more than eight bars, of one if there are two), each landing on
/// the beat with which the next begins. Empty for a passage of one bar, of more than 32, or an open-ended
/// one.
[[nodiscard]] std::vector<BuildUpPart> partsThatOverlap(const Music& whole);

} // namespace piolo::practice
