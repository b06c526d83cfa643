// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/settings/setting_choices.h"

#include "engine/click/voice.h"
#include "models/text/table_text.h"

#include <QtGlobal>

#include <algorithm>
#include <array>
#include <utility>

namespace piolo::models {

namespace {

/// The voices of the click as the settings offer them, the mildest first.
constexpr std::array voiceTexts{
    std::pair{engine::Voice::wood, QT_TRID_NOOP("settings.voice.wood")},
    std::pair{engine::Voice::dry, QT_TRID_NOOP("settings.voice.dry")},
    std::pair{engine::Voice::reed, QT_TRID_NOOP("settings.voice.reed")},
    std::pair{engine::Voice::metal, QT_TRID_NOOP("settings.voice.metal")},
};
static_assert(std::ranges::all_of(engine::voices,
                                  [](engine::Voice voice) {
                                      const auto count = std::ranges::count(
                                          voiceTexts, voice, [](const auto& pair) { return pair.first; });
                                      return count == (engine::isForMeasurement(voice) ? 0 : 1);
                                  }),
              "every voice but those for measurement has its text");

} // namespace

QVariantMap choice(const QVariant& value, const QString& text) { return {{"value", value}, {"text", text}}; }

bool hasChoice(const QVariantList& list, const QVariant& value) {
    return std::any_of(list.begin(), list.end(),
                       [&](const QVariant& entry) { return entry.toMap().value("value") == value; });
}

QVariantList voiceChoices() {
    QVariantList list;
    for (const auto& [voice, text] : voiceTexts)
        list << choice(tableText(engine::nameOf(voice)), qtTrId(text));
    return list;
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

QString nameOfOpening(DayOpening opening) { return tableText(valueName(opening)); }

std::optional<DayOpening> openingNamed(const QString& name) {
    return valueNamed<DayOpening>(name.toStdString());
}

} // namespace piolo::models
