// SPDX-License-Identifier: GPL-3.0-or-later
// The command's output about scores and about bars picked from them.
#pragma once

#include "score/pick/excerpt.h"
#include "score/read/score.h"

#include <string>

namespace piolo::command {

/// Title, parts, their bars and meters, tempo marks: several lines.
[[nodiscard]] std::string scoreReport(const score::Score& score);
/// Meter, tempo and subdivision, then each note with onset, length, written pitch and MIDI note number:
/// several lines.
[[nodiscard]] std::string excerptReport(const score::Part& part, const score::Excerpt& made);

} // namespace piolo::command
