// SPDX-License-Identifier: GPL-3.0-or-later
// How a passage is played, in words.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QString>
#include <QVariantList>

#include "core/passage/manner.h"

namespace piolo::models {

/// "slur two, tongue two"
[[nodiscard]] QString articulationText(Articulation articulation);
/// "long and short", "in groups of three"
[[nodiscard]] QString rhythmText(const Manner& manner);
/// "slurred · long and short"; "" if both are as written.
[[nodiscard]] QString mannerText(const Manner& manner);
/// The same if the number of notes in a group is unknown: "in groups".
[[nodiscard]] QString mannerText(Articulation articulation, Rhythm rhythm);

/// Lists of {value, text}; a value is the index in the enum.
[[nodiscard]] QVariantList articulationChoices();
[[nodiscard]] QVariantList rhythmChoices();

} // namespace piolo::models
