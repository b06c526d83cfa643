// SPDX-License-Identifier: GPL-3.0-or-later
// Where practice left off.
#pragma once

#include "core/history/notebook.h"

namespace piolo::practice {

/// The passage played last; before any was played, the one made last. None in an empty notebook.
[[nodiscard]] Id lastPlayed(const Notebook& notebook);

} // namespace piolo::practice
