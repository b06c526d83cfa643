// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/history/wrong_clocks.h"

#include <algorithm>
#include <tuple>
#include <utility>

namespace piolo {

namespace {

constexpr std::int64_t dayMillis = 86'400'000;

bool applies(const ClockFact& said, const Fact& fact) {
    const Date date = fact.at.date();
    return fact.seq <= said.until && said.from <= date && date <= said.to;
}

Timestamp moved(const Timestamp& at, std::int32_t days) {
    const std::int64_t day = at.date().daysSince1970() + days;
    if (Date::fromDaysSince1970(day).daysSince1970() != day) return at;
    return {at.utcMillis + days * dayMillis, at.offsetMinutes};
}

} // namespace

Date latestPlausible(Date today) noexcept { return Date::fromDaysSince1970(today.daysSince1970() + 1); }

bool isPractice(const FactBody& body) noexcept {
    return roleOf(body) == FactRole::plays || std::holds_alternative<RunThroughFact>(body);
}

void WrongClocks::add(const Fact& fact, const ClockFact& said) {
    std::vector<Fact>& all = devices_[said.of];
    all.insert(std::upper_bound(all.begin(), all.end(), fact, standsBefore), fact);
    if (all.size() > mostOfADevice) all.erase(all.begin());
    ++version_;
}

Timestamp WrongClocks::at(const Fact& fact) const {
    if (devices_.empty()) return fact.at;
    const auto found = devices_.find(fact.device);
    if (found == devices_.end()) return fact.at;
    const auto& all = found->second;
    const auto last = std::find_if(all.rbegin(), all.rend(), [&fact](const Fact& clock) {
        return applies(std::get<ClockFact>(clock.body), fact);
    });
    return last == all.rend() ? fact.at : moved(fact.at, std::get<ClockFact>(last->body).days);
}

void AheadFacts::add(const Fact& fact) {
    const Date date = fact.at.date();
    each_.push_back({fact.device, date, date, fact.seq, 1});
}

std::vector<DatedAhead> AheadFacts::groups() && {
    std::sort(each_.begin(), each_.end(), [](const DatedAhead& a, const DatedAhead& b) {
        return std::tie(a.device, a.from, a.until) < std::tie(b.device, b.from, b.until);
    });
    std::vector<DatedAhead> groups;
    for (DatedAhead& next : each_) {
        DatedAhead* const last = groups.empty() ? nullptr : &groups.back();
        if (last == nullptr || last->device != next.device ||
            next.from.daysSince1970() - last->to.daysSince1970() > gapDays) {
            groups.push_back(std::move(next));
            continue;
        }
        last->to = next.to;
        last->until = std::max(last->until, next.until);
        ++last->count;
    }
    return groups;
}

} // namespace piolo
