// SPDX-License-Identifier: GPL-3.0-or-later
#include "learner.h"

#include <algorithm>
#include <array>
#include <cstdlib>

namespace piolo::samples {

namespace {

/// 1000 / (1 + exp(-x)) at x = 0, 0.5, 1 and so on: a table, because the last digit of exp() differs between
/// libraries.
constexpr std::array<std::int64_t, 13> logistic{500, 622, 731, 818, 881, 924, 953,
                                                971, 982, 989, 993, 996, 998};
/// Even the best player slips now and then.
constexpr std::int64_t surest = 988;

std::int64_t logisticPerMille(std::int64_t distance, std::int64_t width) {
    const std::int64_t halves = 2'000 * std::abs(distance) / width; // thousandths of half a width
    const std::int64_t most = 1'000 * static_cast<std::int64_t>(logistic.size() - 1);
    const std::int64_t place = std::min(halves, most - 1);
    const auto index = static_cast<std::size_t>(place / 1'000);
    const std::int64_t value =
        logistic[index] + (logistic[index + 1] - logistic[index]) * (place % 1'000) / 1'000;
    return distance < 0 ? 1'000 - value : value;
}

} // namespace

Learner::Learner(const Difficulty& difficulty) : difficulty_(difficulty), even_(difficulty.even) {}

std::int64_t Learner::cleanPerMille(Tempo tempo, std::int64_t form) const {
    const std::int64_t today = even_ + even_ * form / 1'000;
    return std::min(surest, logisticPerMille(today - tempo.thousandths(), difficulty_.width));
}

bool Learner::onPlateau(Date date) const { return difficulty_.plateau && difficulty_.plateau->hold(date); }

void Learner::played(Date date) {
    playedToday_ = true;
    if (onPlateau(date)) return;
    const std::int64_t left = std::max<std::int64_t>(0, difficulty_.ceiling - even_);
    even_ += difficulty_.gain * left / (difficulty_.ceiling - difficulty_.even);
}

void Learner::slept(Date date) {
    if (!playedToday_) even_ = std::max(difficulty_.even, even_ - difficulty_.overnight / 4);
    if (playedToday_ && !onPlateau(date))
        even_ = std::min(difficulty_.ceiling, even_ + difficulty_.overnight);
    playedToday_ = false;
}

} // namespace piolo::samples
