// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/text/click_words.h"

#include "models/text/formatter.h"

#include <QStringList>
#include <QtGlobal>

namespace piolo::models {

namespace {

QString swingWords(const ClickPattern& click) {
    return qtTrId("click.swing").arg(QString::fromStdString(swingText(click.swing)), swungWords(click.swung));
}

QString breathWords(const ClickPattern& click) {
    const auto places = static_cast<int>(click.breaths.size());
    const QString waits = qtTrId("click.breath-at-places", places);
    if (click.breathBelow == ClickPattern{}.breathBelow) return waits;
    return qtTrId("click.breath-below").arg(waits, Formatter::tempo(click.breathBelow));
}

} // namespace

QString clickOnWords(ClickOn on) {
    switch (on) {
    case ClickOn::beats:
        return qtTrId("click.every-beat");
    case ClickOn::downbeats:
        return qtTrId("click.downbeats");
    case ClickOn::backbeats:
        return qtTrId("click.two-and-four");
    case ClickOn::offbeats:
        return qtTrId("click.off-beats");
    }
    return {};
}

QString swungWords(SwungNotes notes) {
    return notes == SwungNotes::eighths ? qtTrId("click.eighths") : qtTrId("click.sixteenths");
}

QString accentWords(Accent accent) {
    switch (accent) {
    case Accent::strong:
        return qtTrId("click.strong");
    case Accent::group:
        return qtTrId("click.half-strong");
    case Accent::plain:
        return qtTrId("click.plain");
    case Accent::silent:
        return qtTrId("click.silent");
    }
    return {};
}

QString clickWords(const ClickPattern& click) {
    QStringList parts;
    if (click.on != ClickOn::beats) parts << clickOnWords(click.on);
    if (!click.accents.empty()) parts << qtTrId("click.accents-by-hand");
    if (click.swing != ClickPattern{}.swing) parts << swingWords(click);
    if (click.barsOff > 0) parts << qtTrId("click.bars-in-turn").arg(click.barsOn).arg(click.barsOff);
    if (click.silentBars > 0) parts << qtTrId("click.silent-bars").arg(click.silentBars);
    if (click.leftOutBeats > 0) parts << qtTrId("click.beats-left-out").arg(click.leftOutBeats);
    if (!click.breaths.empty()) parts << breathWords(click);
    return parts.join(QStringLiteral(" · "));
}

} // namespace piolo::models
