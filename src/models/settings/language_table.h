// SPDX-License-Identifier: GPL-3.0-or-later
// The languages of the window: the only table.
#pragma once

#include <QLocale>

#include <array>

namespace piolo::models {

/// Plain values; any thread may read them. Its texts are in src/languages/piolo_CODE.ts.
struct Language {
    const char* code; ///< as in the machine's settings and `--language`
    const char* name; ///< in the language itself
    QLocale::Language language;
    QLocale::Country country; ///< its number and date formats are used if the system uses another language
};

/// The value of the machine's settings and `--language` that leaves the choice to the system.
inline constexpr const char* systemLanguage = "system";

/// The first one is used if the system uses none of them.
inline constexpr std::array languageTable{
    Language{"en", "English", QLocale::English, QLocale::UnitedKingdom},
    Language{"de", "Deutsch", QLocale::German, QLocale::Germany},
    Language{"it", "Italiano", QLocale::Italian, QLocale::Italy},
};

} // namespace piolo::models
