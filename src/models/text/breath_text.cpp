// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/text/breath_text.h"

#include <QRegularExpression>
#include <QStringList>

namespace piolo::models {

namespace {

std::optional<BreathPlace> placeOf(const QString& text) {
    static const QRegularExpression form(QStringLiteral(R"(^(-?\d{1,5})(?::(\d{1,2}))?(?:\+(\d))?$)"));
    const auto match = form.match(text);
    if (!match.hasMatch()) return std::nullopt;
    const auto number = [&](int group) {
        return match.hasCaptured(group) ? match.captured(group).toInt() : 1;
    };
    const BreathPlace place{number(1), number(2), number(3)};
    return isInRange(place) ? std::optional(place) : std::nullopt;
}

} // namespace

std::optional<std::vector<BreathPlace>> readBreaths(const QString& text) {
    std::vector<BreathPlace> places;
    const QString plain = QString(text).remove(QLatin1Char(' '));
    for (const QString& part : plain.split(QLatin1Char(','), Qt::SkipEmptyParts)) {
        const auto place = placeOf(part);
        if (!place) return std::nullopt;
        places.push_back(*place);
    }
    return areBreaths(places) ? std::optional(places) : std::nullopt;
}

QString breathsText(const std::vector<BreathPlace>& places) {
    QStringList parts;
    for (const auto& [bar, beat, beats] : places) {
        QString part = QString::number(bar);
        if (beat != 1) part += QLatin1Char(':') + QString::number(beat);
        if (beats != 1) part += QLatin1Char('+') + QString::number(beats);
        parts << part;
    }
    return parts.join(QStringLiteral(", "));
}

} // namespace piolo::models
