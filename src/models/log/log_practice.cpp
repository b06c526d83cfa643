// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/log/log_practice.h"

#include "models/text/formatter.h"
#include "practice/figures/day_shares.h"

#include <QVariantMap>
#include <QtGlobal>

namespace piolo::models {

namespace {

QString spokenWords(const PracticeDay& day, Date today) {
    const QString date = Formatter::weekday(day.date, today);
    if (!day.practised) return qtTrId("log.day.no-practice").arg(date);
    const QString time = Formatter::duration(day.totalMillis());
    if (day.runs == 0) return qtTrId("log.day.time").arg(date, time);
    return qtTrId("log.day.time-and-runs").arg(date, time).arg(day.clean).arg(day.runs);
}

QString longGapWords(const MissedDays& gap, bool open, Date today) {
    const QString days = Formatter::countWord(gap.days);
    if (open) return qtTrId("log.days-missed").arg(days);
    return qtTrId("log.days-missed-before").arg(days, Formatter::date(gap.first, today));
}

} // namespace

QVariantList practiceMaps(std::span<const PracticeDay> days, std::span<const MissedDays> gaps, Date today) {
    const auto shares = practice::sharesOf(days, gaps);
    QVariantList maps;
    for (std::size_t i = 0; i < days.size(); ++i)
        maps.append(QVariantMap{{QStringLiteral("spoken"), spokenWords(days[i], today)},
                                {QStringLiteral("today"), days[i].date == today},
                                {QStringLiteral("missed"), shares[i].missed},
                                {QStringLiteral("longGap"), shares[i].longGap},
                                {QStringLiteral("runs"), shares[i].runs},
                                {QStringLiteral("apart"), shares[i].apart},
                                {QStringLiteral("throughs"), shares[i].throughs}});
    return maps;
}

QString gapWords(std::span<const PracticeDay> days, std::span<const MissedDays> gaps) {
    using Kind = practice::GapFigures::Kind;
    const practice::GapFigures figures = practice::gapFiguresOf(days, gaps);
    switch (figures.kind) {
    case Kind::nothingPlayed:
        return {};
    case Kind::longGap:
        return longGapWords(*figures.gap, figures.open, days.back().date);
    case Kind::noneSinceFirst:
        return qtTrId("log.no-day-missed");
    case Kind::noneAtAll:
        return qtTrId("log.no-day-missed-lately");
    case Kind::single:
        break;
    }
    return qtTrId("log.never-two-days-missed");
}

} // namespace piolo::models
