// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/text/click_words.h"

#include "models/text/formatter.h"

#include <QCoreApplication>
#include <QStringList>

namespace piolo::models {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(ClickWords)
};

QString swingWords(const ClickPattern& click) {
    return Words::tr("swing %1 in %2")
        .arg(QString::fromStdString(swingText(click.swing)), swungWords(click.swung));
}

QString breathWords(const ClickPattern& click) {
    const auto places = static_cast<int>(click.breaths.size());
    const QString waits = places == 1 ? Words::tr("waits for breath at 1 place")
                                      : Words::tr("waits for breath at %1 places").arg(places);
    if (click.breathBelow == ClickPattern{}.breathBelow) return waits;
    return Words::tr("%1 below %2").arg(waits, Formatter::tempo(click.breathBelow));
}

} // namespace

QString clickOnWords(ClickOn on) {
    switch (on) {
    case ClickOn::beats:
        return Words::tr("every beat");
    case ClickOn::downbeats:
        return Words::tr("downbeats only");
    case ClickOn::backbeats:
        return Words::tr("2 and 4 only");
    case ClickOn::offbeats:
        return Words::tr("off-beats only");
    }
    return {};
}

QString swungWords(SwungNotes notes) {
    return notes == SwungNotes::eighths ? Words::tr("eighths") : Words::tr("sixteenths");
}

QString accentWords(Accent accent) {
    switch (accent) {
    case Accent::strong:
        return Words::tr("strong");
    case Accent::group:
        return Words::tr("half strong");
    case Accent::plain:
        return Words::tr("plain");
    case Accent::silent:
        return Words::tr("silent");
    }
    return {};
}

QString clickWords(const ClickPattern& click) {
    QStringList parts;
    if (click.on != ClickOn::beats) parts << clickOnWords(click.on);
    if (!click.accents.empty()) parts << Words::tr("accents by hand");
    if (click.swing != ClickPattern{}.swing) parts << swingWords(click);
    if (click.barsOff > 0)
        parts
            << Words::tr("bars in turn: %1 with the click, %2 without").arg(click.barsOn).arg(click.barsOff);
    if (click.silentBars > 0) parts << Words::tr("%1 bars of 100 silent").arg(click.silentBars);
    if (click.leftOutBeats > 0) parts << Words::tr("%1 beats of 100 left out").arg(click.leftOutBeats);
    if (!click.breaths.empty()) parts << breathWords(click);
    return parts.join(QStringLiteral(" · "));
}

} // namespace piolo::models
