// SPDX-License-Identifier: GPL-3.0-or-later
// Reads <time>, <direction>, <sound> and <barline>: what is between the notes.
#pragma once

#include "score/read/score.h"
#include "score/read/source.h"

#include <optional>
#include <vector>

namespace piolo::score {

/// A time signature; if it is not valid, a fault is added to the source.
[[nodiscard]] TimeSignature readTime(Source& source, pugi::xml_node time);
/// A tempo mark in a <direction> or a <sound>; nothing if there is none. The caller sets its position.
[[nodiscard]] std::optional<TempoMark> readTempoMark(Source& source, pugi::xml_node element);
/// Repeats, endings and jumps in a <barline>, <direction> or <sound>.
[[nodiscard]] std::vector<SignKind> readSigns(pugi::xml_node element);

} // namespace piolo::score
