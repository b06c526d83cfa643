// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/setting_choices.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>
#include <utility>

namespace piolo::models {

namespace {

constexpr std::array openings{std::pair{DayOpening::twoRungsBelow, "twoRungsBelow"},
                              std::pair{DayOpening::asLeft, "asLeft"}, std::pair{DayOpening::start, "start"}};

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
    return {choice("twoRungsBelow", words("Two rungs below the last full row")),
            choice("asLeft", words("Where it was left")), choice("start", words("At the start tempo"))};
}

QString nameOfOpening(DayOpening opening) {
    const auto* found =
        std::find_if(openings.begin(), openings.end(), [&](auto o) { return o.first == opening; });
    return QString::fromLatin1(found->second);
}

std::optional<DayOpening> openingNamed(const QString& name) {
    const auto* found = std::find_if(openings.begin(), openings.end(),
                                     [&](auto o) { return name == QLatin1String(o.second); });
    return found == openings.end() ? std::nullopt : std::optional(found->first);
}

} // namespace piolo::models
