// SPDX-License-Identifier: GPL-3.0-or-later
#include "diary.h"

#include <algorithm>
#include <utility>

namespace piolo::samples {

namespace {

constexpr std::int64_t millisOfDay = 86'400'000;
constexpr Date summerTime{2026, 3, 29};

} // namespace

void WallClock::turnTo(Date date, std::int64_t millis) {
    now_.offsetMinutes = date < summerTime ? 60 : 120;
    now_.utcMillis = date.daysSince1970() * millisOfDay + millis - now_.offsetMinutes * std::int64_t{60'000};
}

Diary::Diary(std::string device, Seeded& random, const WallClock& clock)
    : device_(std::move(device)), random_(&random), clock_(clock) {}

Id Diary::record(FactBody body) {
    const std::int64_t least = facts_.empty() ? 0 : facts_.back().order + 1;
    Fact fact;
    fact.id = random_->id();
    fact.device = device_;
    fact.seq = facts_.size() + 1;
    fact.at = clock_.now();
    fact.order = std::max(fact.at.utcMillis, least);
    fact.body = std::move(body);
    facts_.push_back(fact);
    notebook_.add(std::move(fact));
    return facts_.back().id;
}

} // namespace piolo::samples
