// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/history/misses.h"

#include <algorithm>
#include <limits>
#include <map>
#include <utility>

namespace piolo {

namespace {

constexpr std::int64_t wholeBeat = 1000;
constexpr std::int64_t minuteMillis = 60'000;

/// Bars and beats of a passage as a single count, in thousandths of a beat from its first downbeat.
class Measured {
public:
    explicit Measured(const Music& music) : music_(music) {
        const Fraction beat = fractionOf(music.meter.beat());
        bar_ = wholeBeat * music.meter.beatsPerBar();
        begins_ = -wholeBeat * music.pickup.numerator * beat.denominator /
                  (std::int64_t{music.pickup.denominator} * beat.numerator);
        ends_ = bar_ * music.bars;
    }

    /// The place of the slip that was marked at `spot`; nothing if it is outside the passage.
    [[nodiscard]] std::optional<std::pair<std::int32_t, std::int32_t>>
    slip(const Spot& spot, Tempo tempo, std::int32_t reactionMillis) const {
        const std::int64_t pressed = (std::int64_t{spot.bar} - music_.firstBar) * bar_ +
                                     (std::int64_t{spot.beat} - 1) * wholeBeat + spot.part;
        if (spot.beat > music_.meter.beatsPerBar() || pressed < begins_) return std::nullopt;
        const std::int64_t late = std::int64_t{reactionMillis} * tempo.thousandths() / minuteMillis;
        const std::int64_t at = std::max(pressed - late, begins_);
        if (music_.bars > 0 && at >= ends_) return std::nullopt;
        const std::int64_t bar = at >= 0 ? at / bar_ : -1;
        return std::pair{static_cast<std::int32_t>(music_.firstBar + bar),
                         static_cast<std::int32_t>((at - bar * bar_) / wholeBeat + 1)};
    }

private:
    const Music& music_;
    std::int64_t bar_ = 0;
    std::int64_t begins_ = 0;
    std::int64_t ends_ = 0;
};

bool counts(const Entry& entry, std::optional<Date> since) {
    const bool run = entry.kind != Entry::Kind::tempo && entry.kind != Entry::Kind::aside;
    return run && entry.mark != Mark::voided && (!since || entry.at.date() >= *since);
}

struct MissedBar {
    std::int32_t number = 0;
    std::int32_t count = 0;
};

/// The passage's own bars that have a miss, in order.
std::vector<MissedBar> missedBars(const Misses& misses, const Music& music) {
    std::vector<MissedBar> bars;
    for (const MissedBeat& beat : misses.beats) {
        if (beat.bar < music.firstBar || beat.bar >= music.firstBar + music.bars) continue;
        if (bars.empty() || bars.back().number != beat.bar) bars.push_back({beat.bar, 0});
        bars.back().count += beat.count;
    }
    return bars;
}

/// The length of the shortest stretch that has at least half of all misses: it begins and ends with a missed
/// bar.
std::int32_t shortestHalf(const std::vector<MissedBar>& bars, std::int32_t all) {
    std::int32_t shortest = std::numeric_limits<std::int32_t>::max();
    std::int32_t held = 0;
    for (std::size_t first = 0, end = 0; end < bars.size(); ++end) {
        held += bars[end].count;
        for (; 2 * held >= all; held -= bars[first++].count)
            shortest = std::min(shortest, bars[end].number - bars[first].number + 1);
    }
    return shortest;
}

/// The first bar of the stretch of that length with the most misses, of several the first.
std::int32_t fullestStretch(const std::vector<MissedBar>& bars, std::int32_t length) {
    std::int32_t best = 0;
    std::int32_t where = 0;
    std::int32_t held = 0;
    for (std::size_t first = 0, end = 0; first < bars.size(); held -= bars[first++].count) {
        for (; end < bars.size() && bars[end].number < bars[first].number + length; ++end)
            held += bars[end].count;
        if (held <= best) continue;
        best = held;
        where = bars[first].number;
    }
    return where;
}

} // namespace

std::int32_t Misses::inBar(std::int32_t bar) const noexcept {
    std::int32_t sum = 0;
    for (const MissedBeat& beat : beats) sum += beat.bar == bar ? beat.count : 0;
    return sum;
}

Misses missesByBar(const PassageRecord& record, std::int32_t reactionMillis, std::optional<Date> since) {
    Misses misses;
    const Measured measured(record.passage.music);
    std::map<std::pair<std::int32_t, std::int32_t>, std::int32_t> places;
    for (const Entry& entry : record.entries) {
        if (!counts(entry, since)) continue;
        ++misses.runs;
        if (entry.mark != Mark::missed) continue;
        if (entry.spots.empty()) ++misses.elsewhere;
        for (const Spot& spot : entry.spots) {
            const auto place = measured.slip(spot, entry.tempo, reactionMillis);
            ++(place ? places[*place] : misses.elsewhere);
            misses.placed += place ? 1 : 0;
        }
    }
    for (const auto& [place, count] : places) misses.beats.push_back({place.first, place.second, count});
    return misses;
}

std::optional<BuildUpPart> worstStretch(const Misses& misses, const Music& music) {
    if (music.bars == 0 || misses.placed < missesForAStretch) return std::nullopt;
    const std::vector<MissedBar> bars = missedBars(misses, music);
    const std::int32_t length = shortestHalf(bars, misses.placed);
    if (length > std::max(1, music.bars / 3)) return std::nullopt;
    const std::int32_t where = fullestStretch(bars, length);
    const std::int32_t runUp = where > music.firstBar ? 1 : 0;
    return BuildUpPart{where - runUp, length + runUp};
}

} // namespace piolo
