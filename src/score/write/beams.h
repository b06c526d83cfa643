// SPDX-License-Identifier: GPL-3.0-or-later
// Which notes of a bar share beams.
#pragma once

#include "score/write/notation.h"

#include <string_view>
#include <vector>

namespace piolo::score {

/// For each note of the bar, its beams from the first (eighths) on, as MusicXML beam-values; empty for a note
/// without a beam. Beams join notes that begin in the same beat or, if the meter has groups, in the same
/// group. A rest ends them, and so does the edge of a tuplet: other programs misread a beam that is partly
/// inside one.
[[nodiscard]] std::vector<std::vector<std::string_view>> beamsOf(const NotatedBar& bar, const Meter& meter,
                                                                 std::int64_t ticksPerWhole);

} // namespace piolo::score
