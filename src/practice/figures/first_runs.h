// SPDX-License-Identifier: GPL-3.0-or-later
// Whether the player is still new to the keys.
#pragma once

#include "core/history/notebook.h"

#include <cstddef>

namespace piolo::practice {

/// So many runs with the keys explained.
inline constexpr std::size_t firstRuns = 10;

/// True until that many runs were logged, of whatever passage.
[[nodiscard]] bool isNew(const Notebook& notebook);

} // namespace piolo::practice
