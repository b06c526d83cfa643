// SPDX-License-Identifier: GPL-3.0-or-later
// The texts of the program in a language.
#pragma once

#include <QString>
#include <QTranslator>

#include <memory>

namespace piolo::text {

// Window thread, or that of the command, while there is an application.

/// The texts in the language with that code, installed for as long as the translator exists. Null if there
/// are none.
[[nodiscard]] std::unique_ptr<QTranslator> textsIn(const QString& code);

/// Loads the texts in English; number and date formats stay. Without any language, a text is its id.
void loadEnglish();

} // namespace piolo::text
