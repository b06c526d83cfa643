// SPDX-License-Identifier: GPL-3.0-or-later
// Where the click sounds, in words.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QString>

#include "core/passage/click_pattern.h"

namespace piolo::models {

[[nodiscard]] QString clickOnWords(ClickOn on);
[[nodiscard]] QString swungWords(SwungNotes notes);
[[nodiscard]] QString accentWords(Accent accent);
/// Everything that is not the default, in one line: "downbeats only · swing 2:1 in eighths". "" for the
/// default click.
[[nodiscard]] QString clickWords(const ClickPattern& click);

} // namespace piolo::models
