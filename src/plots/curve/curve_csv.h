// SPDX-License-Identifier: GPL-3.0-or-later
// Exports the runs, tries and manual tempo changes of passages as comma-separated values.
#pragma once

#include "core/history/notebook.h"

#include <string>
#include <vector>

namespace piolo::plots {

/// RFC 4180 with LF line endings, oldest first, under the header `time,date,kind,tempo,mark,streak_after,id`.
/// `kind` is run, try, silent, context, aside or tempo. `mark` is clean, missed or void, and empty for a
/// manual tempo change.
/// With several passages, they follow one another and each row starts with an extra column `passage`, the
/// passage's id.
[[nodiscard]] std::string curveCsv(const std::vector<const PassageRecord*>& records);

} // namespace piolo::plots
