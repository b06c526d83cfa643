// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/log/log_practice.h"

#include "models/text/formatter.h"

#include <QVariantMap>
#include <QtGlobal>

#include <algorithm>

namespace piolo::models {

namespace {

constexpr std::int64_t minute = 60'000;

const MissedDays* gapAt(std::span<const MissedDays> gaps, Date date) {
    const auto found = std::find_if(gaps.begin(), gaps.end(), [date](const MissedDays& gap) {
        const auto into = date.daysSince1970() - gap.first.daysSince1970();
        return into >= 0 && into < gap.days;
    });
    return found == gaps.end() ? nullptr : &*found;
}

std::int64_t apartMillis(const PracticeDay& day) {
    std::int64_t millis = 0;
    for (const RunKindInfo& info : runKindTable)
        if (info.kind != RunKind::run) millis += day.of(practiceKind(info.kind));
    return millis;
}

QString spokenWords(const PracticeDay& day, Date today) {
    const QString date = Formatter::weekday(day.date, today);
    if (!day.practised) return qtTrId("log.day.no-practice").arg(date);
    const QString time = Formatter::duration(day.totalMillis());
    if (day.runs == 0) return qtTrId("log.day.time").arg(date, time);
    return qtTrId("log.day.time-and-runs").arg(date, time).arg(day.clean).arg(day.runs);
}

/// The last missed day was yesterday, and today can still mend it.
bool isOpen(const MissedDays& gap, const PracticeDay& today) {
    return gap.first.daysSince1970() + gap.days == today.date.daysSince1970() && !today.practised;
}

QString longGapWords(const MissedDays& gap, const PracticeDay& today) {
    const QString days = Formatter::countWord(gap.days);
    if (isOpen(gap, today)) return qtTrId("log.days-missed").arg(days);
    return qtTrId("log.days-missed-before").arg(days, Formatter::date(gap.first, today.date));
}

} // namespace

int mostMinutes(std::span<const PracticeDay> days) {
    std::int64_t most = 0;
    for (const PracticeDay& day : days) most = std::max(most, day.totalMillis());
    return static_cast<int>((most + minute - 1) / minute);
}

QVariantList practiceMaps(std::span<const PracticeDay> days, std::span<const MissedDays> gaps, Date today) {
    const double most = std::max(1.0, static_cast<double>(mostMinutes(days) * minute));
    const auto share = [most](std::int64_t millis) { return static_cast<double>(millis) / most; };
    QVariantList maps;
    for (const PracticeDay& day : days) {
        const MissedDays* const gap = gapAt(gaps, day.date);

        maps.append(QVariantMap{{QStringLiteral("spoken"), spokenWords(day, today)},
                                {QStringLiteral("today"), day.date == today},
                                {QStringLiteral("missed"), gap != nullptr},
                                {QStringLiteral("longGap"), gap != nullptr && gap->days > 1},
                                {QStringLiteral("runs"), share(day.of(PracticeKind::run))},
                                {QStringLiteral("apart"), share(apartMillis(day))},
                                {QStringLiteral("throughs"), share(day.of(PracticeKind::runThrough))}});
    }
    return maps;
}

QString gapWords(std::span<const PracticeDay> days, std::span<const MissedDays> gaps) {
    if (std::none_of(days.begin(), days.end(), [](const PracticeDay& day) { return day.practised; }))
        return {};
    const auto isLong = [](const MissedDays& gap) { return gap.days > 1; };
    const auto longest = std::find_if(gaps.rbegin(), gaps.rend(), isLong);
    if (longest != gaps.rend()) return longGapWords(*longest, days.back());
    if (gaps.empty() && !days.front().practised) return qtTrId("log.no-day-missed");
    if (gaps.empty()) return qtTrId("log.no-day-missed-lately");
    return qtTrId("log.never-two-days-missed");
}

} // namespace piolo::models
