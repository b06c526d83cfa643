// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/log/log_misses.h"

#include "models/text/formatter.h"
#include "models/text/typed_values.h"
#include "practice/figures/bar_parts.h"
#include "practice/figures/break_figures.h"
#include "text/passage_title.h"

#include <QLocale>
#include <QVariantList>
#include <QtGlobal>

#include <algorithm>

namespace piolo::models {

namespace {

QString missWords(int count) { return qtTrId("breaks.misses", count); }

QVariantMap barMap(const practice::BreakBar& broken, const practice::BreakFigures& figures) {
    const std::int32_t bar = broken.number;
    const int all = broken.total();
    QVariantList beats;
    for (const int count : broken.columns)
        beats.append(QVariantMap{{QStringLiteral("share"), figures.share(count)},
                                 {QStringLiteral("count"), count},
                                 {QStringLiteral("worst"), figures.isWorst(count)}});
    return {{QStringLiteral("label"), QLocale().toString(bar)},
            {QStringLiteral("beats"), beats},
            {QStringLiteral("spoken"), qtTrId("breaks.bar").arg(Formatter::spot({bar, 0}), missWords(all))}};
}

/// Runs that do not count were played all the same.
QString emptyWords(const PassageRecord& record, const Misses& misses) {
    if (misses.runs > 0) return qtTrId("breaks.no-miss");
    const bool played = std::any_of(record.entries.begin(), record.entries.end(),
                                    [](const Entry& entry) { return entry.kind != Entry::Kind::tempo; });
    return played ? qtTrId("breaks.none-counted") : qtTrId("breaks.not-played");
}

QString byWords(const practice::BreakFigures& figures) {
    if (figures.leftOut > 0)
        return qtTrId("breaks.by-worst-bar", static_cast<int>(practice::BreakFigures::mostBars));
    if (figures.onlyMissed) return qtTrId("breaks.by-missed-bar");
    return figures.byBeat ? qtTrId("breaks.by-bar-and-beat") : qtTrId("breaks.by-bar");
}

QString noteWords(const PassageRecord& record, const Misses& misses, const practice::BreakFigures& figures) {
    const int all = misses.placed + misses.elsewhere;
    if (all == 0) return emptyWords(record, misses);
    const QString counted =
        qtTrId("breaks.counted").arg(missWords(all), Formatter::runs(misses.runs), byWords(figures));
    return misses.elsewhere == 0 ? counted
                                 : qtTrId("breaks.counted-elsewhere").arg(counted).arg(misses.elsewhere);
}

} // namespace

QVariantMap missesMap(const PassageRecord& record, const Misses& misses) {
    const practice::BreakFigures figures = practice::breaksOf(record.passage.music, misses);
    QVariantList bars;
    for (const practice::BreakBar& bar : figures.bars) bars.append(barMap(bar, figures));
    const QString name = text::passageTitle(record.passage);
    return {{QStringLiteral("title"), qtTrId("breaks.where").arg(name)},
            {QStringLiteral("note"), noteWords(record, misses, figures)},
            {QStringLiteral("bars"), misses.placed == 0 ? QVariantList() : bars}};
}

Passage passageOfBars(const Passage& whole, const BuildUpPart& part) {
    const QString bars = Formatter::bars(musicOf(part, whole.music));
    const QString name = QString::fromStdString(whole.title.name).left(longestTypedName - bars.size() - 2);
    return practice::passageOfBars(whole, part, qtTrId("breaks.bar").arg(name, bars).toStdString());
}

} // namespace piolo::models
