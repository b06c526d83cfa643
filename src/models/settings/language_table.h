// SPDX-License-Identifier: GPL-3.0-or-later
// The languages of the window: the one table.
#pragma once

#include <QLocale>

#include <array>

namespace piolo::models {

/// Plain values; any thread may read them. Its texts are in src/languages/piolo_CODE.ts.
struct Language {
    const char* code; ///< as the machine's settings and `--language` have it
    const char* name; ///< in the language itself
    QLocale::Language language;
    QLocale::Country country; ///< whose numbers and dates it has where the system speaks another language
};

/// Where the machine's settings and `--language` leave the choice to the system.
inline constexpr const char* systemLanguage = "system";

/// The first is what is spoken where the system has none of them.
inline constexpr std::array languageTable{
    Language{"en", "English", QLocale::English, QLocale::UnitedKingdom},
    Language{"de", "Deutsch", QLocale::German, QLocale::Germany},
    Language{"it", "Italiano", QLocale::Italian, QLocale::Italy},
};

} // namespace piolo::models
