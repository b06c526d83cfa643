// SPDX-License-Identifier: GPL-3.0-or-later
// Breath places as typed: "43, 45:3, 47:1+2" is before bar 43, before beat 3 of bar 45, and two beats long
// before bar 47.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QString>

#include "core/passage/click_pattern.h"

#include <optional>
#include <vector>

namespace piolo::models {

/// Nothing if a place is invalid, out of its limits, repeated or out of order, or if there are too many. An
/// empty text means no places.
[[nodiscard]] std::optional<std::vector<BreathPlace>> readBreaths(const QString& text);
[[nodiscard]] QString breathsText(const std::vector<BreathPlace>& places);

} // namespace piolo::models
