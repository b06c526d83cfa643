// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/settings/language.h"

#include "models/settings/language_table.h"
#include "models/settings/setting_choices.h"
#include "text/translation.h"

#include <QCoreApplication>
#include <QLibraryInfo>
#include <QLocale>
#include <QTranslator>

#include <algorithm>
#include <memory>

namespace piolo::models {

namespace {

const Language* languageOf(const QString& code) {
    const auto* const found = std::ranges::find_if(
        languageTable, [&](const Language& language) { return code == QLatin1String(language.code); });
    return found == languageTable.end() ? nullptr : found;
}

const Language& languageOfTheSystem() {
    for (const QString& name : QLocale::system().uiLanguages())
        if (const Language* const found = languageOf(name.left(2))) return *found;
    return languageTable.front();
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

/// A translator uninstalls itself from the application when it is destroyed.
struct Translators {
    std::unique_ptr<QTranslator> ofQt; // names of keys
    std::unique_ptr<QTranslator> own;
};

} // namespace

QVariantList languageChoices() {
    QVariantList list{choice(systemLanguage, languageOfSystem())};
    for (const Language& language : languageTable)
        list << choice(QLatin1String(language.code), QString::fromUtf8(language.name));
    return list;
}

void speak(const QString& code) {
    text::loadEnglish();
    static Translators spoken;
    const Language* const named = languageOf(code);
    const Language& language = named == nullptr ? languageOfTheSystem() : *named;
    QLocale::setDefault(named == nullptr ? QLocale::system() : localeOf(language));
    spoken = {};
    const QString name = QLatin1String(language.code);
    spoken.ofQt = textsOfQt(name);
    if (&language != &languageTable.front()) spoken.own = text::textsIn(name);
}

} // namespace piolo::models
