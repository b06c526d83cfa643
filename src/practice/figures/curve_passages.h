// SPDX-License-Identifier: GPL-3.0-or-later
// Which passages a picture of the log shows.
#pragma once

#include "practice/log/log_index.h"

#include <cstddef>
#include <vector>

namespace piolo::practice {

/// More lines than this in one picture cannot be distinguished.
inline constexpr std::size_t mostCurves = 4;

/// The passages for a filter: the one it names, otherwise those played most recently, newest first.
[[nodiscard]] std::vector<Id> curvePassages(const Notebook& notebook, const LogFilter& filter);

} // namespace piolo::practice
