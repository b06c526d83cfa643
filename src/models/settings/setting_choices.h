// SPDX-License-Identifier: GPL-3.0-or-later
// What can be chosen, as lists of {value, text}.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QString>
#include <QVariantList>

#include "core/rule/day_opening.h"

#include <optional>

namespace piolo::models {

[[nodiscard]] QVariantMap choice(const QVariant& value, const QString& text);
[[nodiscard]] bool hasChoice(const QVariantList& list, const QVariant& value);

/// The voices of the click but for those for measurement.
[[nodiscard]] QVariantList voiceChoices();
[[nodiscard]] QVariantList themeChoices();
/// The words for "the language of the system".
[[nodiscard]] QString languageOfSystem();
[[nodiscard]] QVariantList dayOpeningChoices();
[[nodiscard]] QString nameOfOpening(DayOpening opening);
[[nodiscard]] std::optional<DayOpening> openingNamed(const QString& name);

} // namespace piolo::models
