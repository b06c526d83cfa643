// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/drill/turn_watch.h"

#include <algorithm>

namespace piolo::engine {

Turn inRange(Turn turn) noexcept {
    turn.place = std::clamp(turn.place, 0, Turn::mostPlaces);
    turn.runs = std::clamp(turn.runs, 0, 999);
    turn.seconds = std::clamp(turn.seconds, 0, 3600);
    return turn;
}

void TurnWatch::begin(const Turn& turn, std::uint64_t sample, SampleRate rate) noexcept {
    *this = {};
    turn_ = turn;
    resume(sample, rate);
}

void TurnWatch::pause(std::uint64_t sample) noexcept {
    before_ = millis(sample);
    counts_ = false;
}

void TurnWatch::resume(std::uint64_t sample, SampleRate rate) noexcept {
    before_ = millis(sample);
    since_ = sample;
    rate_ = rate;
    counts_ = true;
}

void TurnWatch::countRun(std::uint64_t sample) noexcept {
    over_ = over_ || endsWith(sample);
    ++runs_;
}

bool TurnWatch::endsWith(std::uint64_t sample) const noexcept {
    const auto wanted = static_cast<std::uint64_t>(turn_.seconds) * 1000;
    const bool enoughTime = wanted > 0 && millis(sample) >= wanted;
    return enoughTime || (turn_.runs > 0 && runs_ + 1 >= turn_.runs);
}

std::uint64_t TurnWatch::millis(std::uint64_t sample) const noexcept {
    if (!counts_ || sample <= since_) return before_;
    return before_ + (sample - since_) * 1000 / static_cast<std::uint64_t>(rate_.hertz);
}

} // namespace piolo::engine
