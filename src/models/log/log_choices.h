// SPDX-License-Identifier: GPL-3.0-or-later
// The filters of the log: each choice is {value, text}, the first of them means everything.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QString>
#include <QVariantList>

#include "practice/log/log_index.h"

#include <optional>

namespace piolo::models {

[[nodiscard]] QVariantList pieceChoices(const Notebook& notebook);
/// The passages of that piece, or all of them if it is none; without removed ones.
[[nodiscard]] QVariantList passageChoices(const Notebook& notebook, Id piece);
[[nodiscard]] QVariantList kindChoices();
[[nodiscard]] QVariantList stretchChoices();

/// The value in kindChoices() of the filter's kind; "" for all.
[[nodiscard]] QString kindIn(const practice::LogFilter& filter);
/// Sets the filter to the kind with that name; to all kinds for any other text.
void setKindOf(practice::LogFilter& filter, const QString& word);
/// The first day of that period in stretchChoices(), up to `today`; nothing for everything.
[[nodiscard]] std::optional<Date> firstDay(const QString& stretch, Date today);

} // namespace piolo::models
