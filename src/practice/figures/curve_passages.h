// SPDX-License-Identifier: GPL-3.0-or-later
// Which passages a picture of the log is about.
#pragma once

#include "practice/log/log_index.h"

#include <cstddef>
#include <vector>

namespace piolo::practice {

/// More lines than this on one picture cannot be told apart.
inline constexpr std::size_t mostCurves = 4;

/// The passages that the filter is about: the one it names, else those played last, the newest first.
[[nodiscard]] std::vector<Id> curvePassages(const Notebook& notebook, const LogFilter& filter);

} // namespace piolo::practice
