// SPDX-License-Identifier: GPL-3.0-or-later
// The differences between a passage file and the folder, in words.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QString>

#include "core/passage/import_plan.h"

namespace piolo::models {

/// "target: 96 → 100"; an empty value is "none".
[[nodiscard]] QString differenceWords(const Difference& difference);
/// "new", "the same", "different", "removed here".
[[nodiscard]] QString stateWords(ImportState state);

} // namespace piolo::models
