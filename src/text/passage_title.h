// SPDX-License-Identifier: GPL-3.0-or-later
// What a passage is called on the screen.
#pragma once

// Qt stands first: moc cannot read the standard headers before it.
#include <QString>

#include "core/passage/passage.h"

namespace piolo::text {

/// Its name; that of a scale in the player's language, unless the player gave it another one.
[[nodiscard]] QString passageTitle(const Passage& passage);

} // namespace piolo::text
