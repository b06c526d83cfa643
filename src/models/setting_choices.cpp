// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/setting_choices.h"

#include "journal/words.h"

#include <QCoreApplication>

#include <algorithm>

namespace piolo::models {

namespace {

QString words(const char* text) { return QCoreApplication::translate("SettingChoices", text); }

} // namespace

QVariantMap choice(const QVariant& value, const QString& text) { return {{"value", value}, {"text", text}}; }

bool hasChoice(const QVariantList& list, const QVariant& value) {
    return std::any_of(list.begin(), list.end(),
                       [&](const QVariant& entry) { return entry.toMap().value("value") == value; });
}

QVariantList voiceChoices() {
    return {choice("wood", words("Wood: warm")), choice("dry", words("Dry: short and plain")),
            choice("reed", words("Reed: edgy")), choice("metal", words("Metal: the sharpest"))};
}

QVariantList themeChoices() {
    return {choice("system", words("As the system")), choice("light", words("Light")),
            choice("dark", words("Dark"))};
}

QVariantList dayOpeningChoices() {
    return {choice(nameOfOpening(DayOpening::twoRungsBelow), words("Two rungs below the last full row")),
            choice(nameOfOpening(DayOpening::asLeft), words("Where it was left")),
            choice(nameOfOpening(DayOpening::start), words("At the start tempo"))};
}

QString nameOfOpening(DayOpening opening) {
    const auto word = journal::wordOf(opening);
    return QString::fromLatin1(word.data(), static_cast<qsizetype>(word.size()));
}

std::optional<DayOpening> openingNamed(const QString& name) { return journal::openingOf(name.toStdString()); }

} // namespace piolo::models
