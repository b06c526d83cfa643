// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/figures/day_shares.h"

#include <algorithm>
#include <cstdint>

namespace piolo::practice {

namespace {

constexpr std::int64_t millisInMinute = 60'000;

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

bool isOpen(const MissedDays& gap, const PracticeDay& today) {
    return gap.first.daysSince1970() + gap.days == today.date.daysSince1970() && !today.practised;
}

} // namespace

int mostMinutes(std::span<const PracticeDay> days) {
    std::int64_t most = 0;
    for (const PracticeDay& day : days) most = std::max(most, day.totalMillis());
    return static_cast<int>((most + millisInMinute - 1) / millisInMinute);
}

std::vector<DayShares> sharesOf(std::span<const PracticeDay> days, std::span<const MissedDays> gaps) {
    const double most = std::max(1.0, static_cast<double>(mostMinutes(days) * millisInMinute));
    const auto share = [most](std::int64_t millis) { return static_cast<double>(millis) / most; };
    std::vector<DayShares> shares;
    for (const PracticeDay& day : days) {
        const MissedDays* const gap = gapAt(gaps, day.date);
        shares.push_back({share(day.of(PracticeKind::run)), share(apartMillis(day)),
                          share(day.of(PracticeKind::runThrough)), gap != nullptr,
                          gap != nullptr && gap->days > 1});
    }
    return shares;
}

GapFigures gapFiguresOf(std::span<const PracticeDay> days, std::span<const MissedDays> gaps) {
    using Kind = GapFigures::Kind;
    if (std::none_of(days.begin(), days.end(), [](const PracticeDay& day) { return day.practised; }))
        return {};
    const auto isLong = [](const MissedDays& gap) { return gap.days > 1; };
    const auto longest = std::find_if(gaps.rbegin(), gaps.rend(), isLong);
    if (longest != gaps.rend()) return {Kind::longGap, *longest, isOpen(*longest, days.back())};
    if (!gaps.empty()) return {Kind::single, {}, false};
    return {days.front().practised ? Kind::noneAtAll : Kind::noneSinceFirst, {}, false};
}

} // namespace piolo::practice
