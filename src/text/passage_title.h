// SPDX-License-Identifier: GPL-3.0-or-later
// The title of a passage on the screen.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QString>

#include "core/passage/passage.h"

namespace piolo::text {

/// Its name; for a scale, its name in the player's language unless the player gave it another one.
[[nodiscard]] QString passageTitle(const Passage& passage);

} // namespace piolo::text
