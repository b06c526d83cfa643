// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/drill/turn_tones.h"

namespace piolo::engine {

namespace {

std::uint64_t samplesOf(std::int32_t millis, SampleRate rate) noexcept {
    return static_cast<std::uint64_t>(std::int64_t{millis} * rate.hertz / 1000);
}

} // namespace

std::uint64_t TurnTones::begin(const Turn& turn, std::uint64_t sample, SampleRate rate) noexcept {
    left_ = turn.place;
    if (left_ == 0) return sample;
    next_ = sample + (turn.follows ? samplesOf(TurnTiming::quiet, rate) : 0);
    apart_ = samplesOf(TurnTiming::apart, rate);
    return next_ + samplesOf(TurnTiming::countIn, rate);
}

bool TurnTones::take(std::uint64_t now) noexcept {
    if (nextSample() > now) return false;
    --left_;
    next_ += apart_;
    return true;
}

} // namespace piolo::engine
