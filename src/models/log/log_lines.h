// SPDX-License-Identifier: GPL-3.0-or-later
// The text of a line of the log that consists of entries.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QString>

#include "practice/figures/log_lines.h"

namespace piolo::models {

/// "climbs to 82", "drops to 80 · bar 43, beat 3", "a try: changes nothing", "set by hand", "climbs to 82 ·
/// on paper".
[[nodiscard]] QString effectWords(const practice::LogLine& line);
/// "clean", "missed", "not counted: stopped"; empty for a tempo that was set.
[[nodiscard]] QString markWords(const Entry& entry);
/// "●●▼": a dot for each clean run, a triangle for a miss, a ring for a void one. If there are too many to
/// take in at a glance, they are counted: "23 ● 2 ▼".
[[nodiscard]] QString markShapes(const practice::LogLine& line);
/// The same for a screen reader: "2 clean, 1 missed".
[[nodiscard]] QString markCounts(const practice::LogLine& line);

} // namespace piolo::models
