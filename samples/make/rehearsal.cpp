// SPDX-License-Identifier: GPL-3.0-or-later
#include "rehearsal.h"

#include <algorithm>

namespace piolo::samples {

namespace {

constexpr int stopsAtFirst = 5;

} // namespace

void Rehearsal::mayStop(std::int32_t bar, std::int64_t perMille) {
    if (random_.chance(perMille)) stops_.push_back(bar);
}

void Rehearsal::play(int time) {
    for (int other = time; other < stopsAtFirst; ++other)
        if (random_.chance(900))
            stops_.push_back(static_cast<std::int32_t>(random_.between(2, piece_.bars - 1)));
    std::sort(stops_.begin(), stops_.end());
    stops_.erase(std::unique(stops_.begin(), stops_.end()), stops_.end());
    RunThroughFact played{piece_.id, {}, 0, true, {}};
    std::int64_t lost = 0;
    for (const std::int32_t bar : stops_) {
        played.stops.push_back({bar, millisTo(bar) + lost});
        lost += random_.between(5'000, 11'000);
    }
    played.millis = millisTo(piece_.bars + 1) + lost;
    clock_.pass(played.millis + random_.between(20'000, 60'000));
    diary_.record(played);
}

std::int64_t Rehearsal::millisTo(std::int32_t bar) const {
    const std::int64_t beats = std::int64_t{bar - 1} * piece_.music.meter.beatsPerBar();
    return beats * 60'000'000 / piece_.music.tempo->thousandths();
}

} // namespace piolo::samples
