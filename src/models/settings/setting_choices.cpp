// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/settings/setting_choices.h"

#include "journal/lines/value_names.h"

#include <QCoreApplication>

#include <algorithm>

namespace piolo::models {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(SettingChoices)
};

} // namespace

QVariantMap choice(const QVariant& value, const QString& text) { return {{"value", value}, {"text", text}}; }

bool hasChoice(const QVariantList& list, const QVariant& value) {
    return std::any_of(list.begin(), list.end(),
                       [&](const QVariant& entry) { return entry.toMap().value("value") == value; });
}

QVariantList voiceChoices() {
    return {choice("wood", Words::tr("Wood: warm")), choice("dry", Words::tr("Dry: short and plain")),
            choice("reed", Words::tr("Reed: edgy")), choice("metal", Words::tr("Metal: the sharpest"))};
}

QVariantList themeChoices() {
    return {choice("system", Words::tr("As the system")), choice("light", Words::tr("Light")),
            choice("dark", Words::tr("Dark"))};
}

QString languageOfSystem() { return Words::tr("As the system", "the language"); }

QVariantList dayOpeningChoices() {
    return {choice(nameOfOpening(DayOpening::twoRungsBelow), Words::tr("Two rungs below the last full row")),
            choice(nameOfOpening(DayOpening::asLeft), Words::tr("Where it was left")),
            choice(nameOfOpening(DayOpening::start), Words::tr("At the start tempo"))};
}

QString nameOfOpening(DayOpening opening) {
    const auto word = journal::wordOf(opening);
    return QString::fromLatin1(word.data(), static_cast<qsizetype>(word.size()));
}

std::optional<DayOpening> openingNamed(const QString& name) { return journal::openingOf(name.toStdString()); }

} // namespace piolo::models
