// SPDX-License-Identifier: GPL-3.0-or-later
// The runs, tries and set tempi of passages as comma-separated values.
#pragma once

#include "core/history/notebook.h"

#include <string>
#include <vector>

namespace piolo::plots {

/// RFC 4180 with LF line ends, oldest first, under the header `time,date,kind,tempo,mark,streak_after,id`.
/// `kind` is run, try, silent, context, aside or tempo; `mark` is clean, missed or void, and empty where a
/// tempo was set.
/// Of several passages one after the other, each row with its passage's id in a first column `passage`.
[[nodiscard]] std::string curveCsv(const std::vector<const PassageRecord*>& records);

} // namespace piolo::plots
