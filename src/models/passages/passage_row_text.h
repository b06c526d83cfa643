// SPDX-License-Identifier: GPL-3.0-or-later
// A row of the list of passages, and its section, in words.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QString>

#include "models/passages/passage_row.h"

namespace piolo::models {

/// The piece's id, "own" for a separate exercise, or "" if the list is not sorted by piece.
[[nodiscard]] QString sectionOf(const PassageRow& row, PassageOrder order);
/// The heading of its section: the piece's name.
[[nodiscard]] QString sectionTitle(const PassageRow& row);
/// "12 May · in 23 days"; "" without a date.
[[nodiscard]] QString sectionDue(const PassageRow& row, Date today);
/// "12 May"; "" without a date.
[[nodiscard]] QString dueText(const PassageRow& row, Date today);
/// The whole row as a sentence.
[[nodiscard]] QString spokenText(const PassageRow& row);

} // namespace piolo::models
