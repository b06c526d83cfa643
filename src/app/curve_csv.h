// SPDX-License-Identifier: GPL-3.0-or-later
// A passage's runs, tries and set tempi as comma-separated values.
#pragma once

#include "core/notebook.h"

#include <string>
#include <vector>

namespace piolo::app {

/// RFC 4180 with LF line ends, oldest first, under the header `time,date,kind,tempo,mark,streak_after,id`.
/// `kind` is run, try, silent, context, aside or tempo; `mark` is clean, missed or void, and empty where a
/// tempo was set.
[[nodiscard]] std::string curveCsv(const PassageRecord& record);
/// The same for several, one passage after the other, with its id in a first column `passage`.
[[nodiscard]] std::string curveCsv(const std::vector<const PassageRecord*>& records);

} // namespace piolo::app
