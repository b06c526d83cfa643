// SPDX-License-Identifier: GPL-3.0-or-later
// A drill run by run, for people to read, and whether all who kept count agree.
#pragma once

#include "core/history/notebook.h"
#include "practice/virtual/virtual_drill.h"

#include <string>

namespace piolo::samples {

/// A line a run: number, tempo, mark, clean in a row, next tempo. Ends in a newline.
[[nodiscard]] std::string drillTable(const practice::VirtualDrillResult& drill);

/// Holds what the engine told against a fold of what is on disk: every run's tempo, mark and standing, the
/// number of runs on that day, and where the passage stands. Empty when they agree, else the first
/// difference in one line.
[[nodiscard]] std::string disagreement(const practice::VirtualDrillResult& drill, const PassageRecord& record,
                                       Date day);

} // namespace piolo::samples
