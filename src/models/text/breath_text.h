// SPDX-License-Identifier: GPL-3.0-or-later
// Breath places as people type them: "43, 45:3, 47:1+2" is before bar 43, before beat 3 of bar 45, and two
// beats long before bar 47.
#pragma once

// Qt stands first: moc cannot read the standard headers before it.
#include <QString>

#include "core/passage/click_pattern.h"

#include <optional>
#include <vector>

namespace piolo::models {

/// Nothing when a place is none, is out of its limits, stands twice or out of order, or when there are too
/// many. An empty text: no place.
[[nodiscard]] std::optional<std::vector<BreathPlace>> readBreaths(const QString& text);
[[nodiscard]] QString breathsText(const std::vector<BreathPlace>& places);

} // namespace piolo::models
