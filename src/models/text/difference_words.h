// SPDX-License-Identifier: GPL-3.0-or-later
// What differs between a passage file and the folder, in words.
#pragma once

// Qt stands first: moc cannot read the standard headers before it.
#include <QString>

#include "core/passage/import_plan.h"

namespace piolo::models {

/// "target: 96 → 100"; a value that is none is "none".
[[nodiscard]] QString differenceWords(const Difference& difference);
/// "new", "the same", "differs", "removed here".
[[nodiscard]] QString stateWords(ImportState state);

} // namespace piolo::models
