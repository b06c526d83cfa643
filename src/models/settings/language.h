// SPDX-License-Identifier: GPL-3.0-or-later
// The language of the window, with the numbers and dates that go with it.
#pragma once

// Qt stands first: moc cannot read the standard headers before it.
#include <QString>
#include <QVariantList>

namespace piolo::models {

/// "system", and each language under its code and its own name: {value, text}. Window's thread.
[[nodiscard]] QVariantList languageChoices();

/// The texts in English, numbers and dates as they are. Without it, and without speak(), a text is its id.
/// Window's thread, or the command's, while there is an application.
void loadEnglish();

/// From here on texts, numbers and dates are in that language. "system": the first of the system's languages
/// that there is, with the system's own numbers and dates; so is a code that is not known. What was made
/// into text before stays as it is. Window's thread, while there is an application.
void speak(const QString& language);

} // namespace piolo::models
