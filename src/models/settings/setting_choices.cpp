// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/settings/setting_choices.h"

#include "journal/lines/value_names.h"

#include <QtGlobal>

#include <algorithm>

namespace piolo::models {

QVariantMap choice(const QVariant& value, const QString& text) { return {{"value", value}, {"text", text}}; }

bool hasChoice(const QVariantList& list, const QVariant& value) {
    return std::any_of(list.begin(), list.end(),
                       [&](const QVariant& entry) { return entry.toMap().value("value") == value; });
}

QVariantList voiceChoices() {
    return {choice("wood", qtTrId("settings.voice.wood")), choice("dry", qtTrId("settings.voice.dry")),
            choice("reed", qtTrId("settings.voice.reed")), choice("metal", qtTrId("settings.voice.metal"))};
}

QVariantList themeChoices() {
    return {choice("system", qtTrId("settings.looks.system")),
            choice("light", qtTrId("settings.looks.light")), choice("dark", qtTrId("settings.looks.dark"))};
}

QString languageOfSystem() { return qtTrId("settings.language.system"); }

QVariantList dayOpeningChoices() {
    return {choice(nameOfOpening(DayOpening::twoRungsBelow), qtTrId("settings.day-opening.below")),
            choice(nameOfOpening(DayOpening::asLeft), qtTrId("settings.day-opening.as-left")),
            choice(nameOfOpening(DayOpening::start), qtTrId("settings.day-opening.start"))};
}

QString nameOfOpening(DayOpening opening) {
    const auto word = journal::wordOf(opening);
    return QString::fromLatin1(word.data(), static_cast<qsizetype>(word.size()));
}

std::optional<DayOpening> openingNamed(const QString& name) { return journal::openingOf(name.toStdString()); }

} // namespace piolo::models
