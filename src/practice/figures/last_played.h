// SPDX-License-Identifier: GPL-3.0-or-later
// Where practice left off.
#pragma once

#include "core/history/notebook.h"

namespace piolo::practice {

/// The passage played most recently; if none was played, the one created most recently. None in an empty
/// notebook.
[[nodiscard]] Id lastPlayed(const Notebook& notebook);

} // namespace piolo::practice
