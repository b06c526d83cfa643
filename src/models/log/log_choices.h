// SPDX-License-Identifier: GPL-3.0-or-later
// What the log can be narrowed to: each choice a {value, text}, the first of them everything.
#pragma once

// Qt stands first: moc cannot read the standard headers before it.
#include <QString>
#include <QVariantList>

#include "practice/log/log_index.h"

#include <optional>

namespace piolo::models {

[[nodiscard]] QVariantList pieceChoices(const Notebook& notebook);
/// Passages of that piece, or all of them for none; removed ones are not offered.
[[nodiscard]] QVariantList passageChoices(const Notebook& notebook, Id piece);
[[nodiscard]] QVariantList kindChoices();
[[nodiscard]] QVariantList stretchChoices();

/// The word of the filter's kind in kindChoices(); "" for all.
[[nodiscard]] QString kindIn(const practice::LogFilter& filter);
/// Narrows the filter to the kind of that word; to none for any other.
void setKindOf(practice::LogFilter& filter, const QString& word);
/// The first day of that stretch in stretchChoices(), up to `today`; none for everything.
[[nodiscard]] std::optional<Date> firstDay(const QString& stretch, Date today);

} // namespace piolo::models
