// SPDX-License-Identifier: GPL-3.0-or-later
// A drill as a table of runs, and whether all counts agree.
#pragma once

#include "core/history/notebook.h"
#include "practice/virtual/virtual_drill.h"

#include <string>

namespace piolo::samples {

/// One line per run: number, tempo, mark, clean in a row, next tempo. Ends with a newline.
[[nodiscard]] std::string drillTable(const practice::VirtualDrillResult& drill);

/// Compares the engine's results with a fold of the facts on disk: the tempo, mark and standing of every run,
/// the number of runs on that day, and the passage's standing. Empty if they agree, otherwise the first
/// difference in one line.
[[nodiscard]] std::string disagreement(const practice::VirtualDrillResult& drill, const PassageRecord& record,
                                       Date day);

} // namespace piolo::samples
