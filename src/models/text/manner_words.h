// SPDX-License-Identifier: GPL-3.0-or-later
// How a passage is played, in words.
#pragma once

// Qt stands first: moc cannot read the standard headers before it.
#include <QString>
#include <QVariantList>

#include "core/passage/manner.h"

namespace piolo::models {

/// "slur two, tongue two"
[[nodiscard]] QString articulationText(Articulation articulation);
/// "long and short", "in groups of three"
[[nodiscard]] QString rhythmText(const Manner& manner);
/// "slurred · long and short"; "" when both are as written.
[[nodiscard]] QString mannerText(const Manner& manner);
/// The same where the number of notes in a group is not known: "in groups".
[[nodiscard]] QString mannerText(Articulation articulation, Rhythm rhythm);

/// Lists of {value, text}; a value is the place in the enum.
[[nodiscard]] QVariantList articulationChoices();
[[nodiscard]] QVariantList rhythmChoices();

} // namespace piolo::models
