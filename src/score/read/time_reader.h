// SPDX-License-Identifier: GPL-3.0-or-later
// Reads <time>, <direction> and <sound>, <barline>: what stands between the notes.
#pragma once

#include "score/read/score.h"
#include "score/read/source.h"

#include <optional>
#include <vector>

namespace piolo::score {

/// A time signature; with a fault in the source when it is none.
[[nodiscard]] TimeSignature readTime(Source& source, pugi::xml_node time);
/// A tempo mark in a <direction> or a <sound>; its place is left to the caller. Nothing when there is none.
[[nodiscard]] std::optional<TempoMark> readTempoMark(Source& source, pugi::xml_node element);
/// Repeats, endings and jumps in a <barline>, <direction> or <sound>.
[[nodiscard]] std::vector<SignKind> readSigns(pugi::xml_node element);

} // namespace piolo::score
