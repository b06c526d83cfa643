// SPDX-License-Identifier: GPL-3.0-or-later
// Which notes of a bar hang on common beams.
#pragma once

#include "score/write/notation.h"

#include <string_view>
#include <vector>

namespace piolo::score {

/// For each note of the bar its beams from the first (eighths) on, in the words of MusicXML's beam-value;
/// none for a note without a beam. Beams join what begins in the same beat, or group of beats of a meter that
/// has groups. A rest ends them, and so does the edge of a tuplet: readers lose their place where a beam
/// stands half in one.
[[nodiscard]] std::vector<std::vector<std::string_view>> beamsOf(const NotatedBar& bar, const Meter& meter,
                                                                 std::int64_t ticksPerWhole);

} // namespace piolo::score
