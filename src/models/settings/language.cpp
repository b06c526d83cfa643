// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/settings/language.h"

#include "models/settings/setting_choices.h"
#include "text/translation.h"

#include <QCoreApplication>
#include <QLibraryInfo>
#include <QLocale>
#include <QTranslator>

#include <algorithm>
#include <array>
#include <memory>

namespace piolo::models {

namespace {

struct Language {
    const char* code;
    const char* name; ///< in the language itself
    QLocale::Language language;
    QLocale::Country country; ///< whose numbers and dates it has where the system speaks another one
};

// The first one is used for a system that speaks none of them.
constexpr std::array languages{
    Language{"en", "English", QLocale::English, QLocale::UnitedKingdom},
    Language{"de", "Deutsch", QLocale::German, QLocale::Germany},
    Language{"it", "Italiano", QLocale::Italian, QLocale::Italy},
};

const Language* languageOf(const QString& code) {
    const auto* const found = std::find_if(languages.begin(), languages.end(), [&](const Language& language) {
        return code == QLatin1String(language.code);
    });
    return found == languages.end() ? nullptr : found;
}

const Language& systemLanguage() {
    for (const QString& name : QLocale::system().uiLanguages())
        if (const Language* const found = languageOf(name.left(2))) return *found;
    return languages.front();
}

QLocale localeOf(const Language& language) {
    const QLocale system = QLocale::system();
    return system.language() == language.language ? system : QLocale(language.language, language.country);
}

std::unique_ptr<QTranslator> textsOfQt(const QString& code) {
    auto made = std::make_unique<QTranslator>();
    const QString folder = QLibraryInfo::path(QLibraryInfo::TranslationsPath);
    if (!made->load(QStringLiteral("qtbase_") + code, folder)) return nullptr;
    QCoreApplication::installTranslator(made.get());
    return made;
}

/// A translator leaves the application by itself when it goes.
struct Translators {
    std::unique_ptr<QTranslator> ofQt; // the names of keys
    std::unique_ptr<QTranslator> own;
};

} // namespace

QVariantList languageChoices() {
    QVariantList list{choice("system", languageOfSystem())};
    for (const Language& language : languages)
        list << choice(QLatin1String(language.code), QString::fromUtf8(language.name));
    return list;
}

void speak(const QString& code) {
    text::loadEnglish();
    static Translators spoken;
    const Language* const named = languageOf(code);
    const Language& language = named == nullptr ? systemLanguage() : *named;
    QLocale::setDefault(named == nullptr ? QLocale::system() : localeOf(language));
    spoken = {};
    const QString name = QLatin1String(language.code);
    spoken.ofQt = textsOfQt(name);
    if (&language != &languages.front()) spoken.own = text::textsIn(name);
}

} // namespace piolo::models
