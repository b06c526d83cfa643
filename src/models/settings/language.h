// SPDX-License-Identifier: GPL-3.0-or-later
// The language of the window, with its number and date formats.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QString>
#include <QVariantList>

namespace piolo::models {

/// "system", and each language with its code and its own name: {value, text}. Window thread.
[[nodiscard]] QVariantList languageChoices();

/// From now on, texts, numbers and dates are in that language. "system" is the first available of the
/// system's languages, with the system's own number and date formats; an unknown code counts as "system".
/// Texts made earlier do not change. Window thread, while there is an application.
void speak(const QString& language);

} // namespace piolo::models
