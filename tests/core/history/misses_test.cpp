// SPDX-License-Identifier: GPL-3.0-or-later
#include "../scribe.h"
#include "../seed.h"
#include "core/history/misses.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <map>
#include <optional>
#include <utility>

using namespace piolo;
using namespace piolo::testing;

namespace {

/// Bars 41 to 49 in 4/4.
Music nineBars() {
    Music music;
    music.firstBar = 41;
    music.bars = 9;
    return music;
}

class Breaking : public Scribe {
public:
    explicit Breaking(const Music& music = nineBars()) { add(PassageFact{passage, {}, music, {}}); }

    void missAt(Spot spot, std::int32_t bpm = 60, RunKind kind = RunKind::run, Mark mark = Mark::missed) {
        RunFact run;
        run.passage = passage;
        run.tempo = Tempo::bpm(bpm);
        run.mark = mark;
        run.kind = kind;
        run.spots = {spot};
        add(run);
    }
    [[nodiscard]] std::vector<MissedBeat> beats(std::int32_t reactionMillis) const {
        return missesByBar(record(), reactionMillis).beats;
    }
};

} // namespace

TEST_CASE("a miss is counted where the key was pressed, less the reaction at the run's tempo") {
    Breaking scribe;
    scribe.missAt({43, 2, 500}, 60); // 250 ms are a quarter of a beat
    CHECK(scribe.beats(250) == std::vector<MissedBeat>{{43, 2, 1}});
    CHECK(scribe.beats(500) == std::vector<MissedBeat>{{43, 2, 1}});
    CHECK(scribe.beats(501) == std::vector<MissedBeat>{{43, 1, 1}});
    Breaking faster;
    faster.missAt({43, 2, 500}, 240); // and a whole beat here
    CHECK(faster.beats(0) == std::vector<MissedBeat>{{43, 2, 1}});
    CHECK(faster.beats(250) == std::vector<MissedBeat>{{43, 1, 1}});
    CHECK(faster.beats(1000) == std::vector<MissedBeat>{{42, 2, 1}});
}

TEST_CASE("no slip lies before the first note, which a pick-up moves") {
    Breaking scribe;
    scribe.missAt({41, 1, 100}, 120);
    CHECK(scribe.beats(1000) == std::vector<MissedBeat>{{41, 1, 1}});
    Music music = nineBars();
    music.pickup = {1, 4};
    Breaking withPickup(music);
    withPickup.missAt({41, 1, 100}, 120);
    withPickup.missAt({40, 4, 900}, 120);
    CHECK(withPickup.beats(1000) == std::vector<MissedBeat>{{40, 4, 2}});
    CHECK(withPickup.beats(0) == std::vector<MissedBeat>{{40, 4, 1}, {41, 1, 1}});
}

TEST_CASE("places that are not in the passage, or not known, are counted apart") {
    Breaking scribe;
    scribe.missAt({49, 4, 999});
    scribe.missAt({50, 1, 0}); // on the landing note, pressed after the last bar
    scribe.missAt({40, 4, 0}); // before a passage without a pick-up
    scribe.missAt({43, 5, 0}); // a beat that does not exist in a bar of four
    scribe.miss();
    const Misses misses = missesByBar(scribe.record(), 0);
    CHECK(misses.beats == std::vector<MissedBeat>{{49, 4, 1}});
    CHECK(misses.placed == 1);
    CHECK(misses.elsewhere == 4);
    CHECK(misses.runs == 5);
    CHECK(missesByBar(scribe.record(), 300).beats == std::vector<MissedBeat>{{49, 4, 2}});
}

TEST_CASE("clean runs count, void ones and those aside do not, and earlier days are left out") {
    Breaking scribe;
    scribe.missAt({43, 1, 0});
    scribe.turnTo("2026-03-02");
    scribe.missAt({44, 1, 0}, 60, RunKind::silent);
    scribe.missAt({44, 1, 0}, 60, RunKind::aside);
    scribe.missAt({44, 1, 0}, 60, RunKind::run, Mark::voided);
    scribe.clean();
    CHECK(missesByBar(scribe.record(), 0).runs == 3);
    CHECK(scribe.beats(0) == std::vector<MissedBeat>{{43, 1, 1}, {44, 1, 1}});
    const Misses newer = missesByBar(scribe.record(), 0, day("2026-03-02"));
    CHECK(newer.runs == 2);
    CHECK(newer.beats == std::vector<MissedBeat>{{44, 1, 1}});
    CHECK(newer.inBar(44) == 1);
    CHECK(newer.inBar(43) == 0);
}

TEST_CASE("the worst stretch is the shortest that holds half of the misses, with a bar of run-up") {
    const Music music = nineBars();
    Misses misses;
    misses.beats = {{41, 1, 1}, {44, 2, 1}, {45, 1, 1}, {49, 1, 1}};
    misses.placed = 4;
    CHECK(worstStretch(misses, music) == BuildUpPart{43, 3}); // 44 and 45, plus 43 before them
    misses.beats = {{41, 1, 3}, {45, 1, 2}};
    misses.placed = 5;
    CHECK(worstStretch(misses, music) == BuildUpPart{41, 1}); // there is no bar before the first
    misses.beats = {{47, 1, 1}, {47, 3, 1}, {42, 1, 1}};
    misses.placed = 3;
    CHECK(worstStretch(misses, music) == BuildUpPart{46, 2});
}

TEST_CASE("a passage that breaks everywhere, or hardly ever, has no worst stretch") {
    Music music = nineBars();
    Misses misses;
    misses.beats = {{41, 1, 1}, {43, 1, 1}, {45, 1, 1}, {47, 1, 1}, {49, 1, 1}};
    misses.placed = 5;
    CHECK_FALSE(worstStretch(misses, music));
    misses.beats = {{43, 1, 2}};
    misses.placed = 2;
    CHECK_FALSE(worstStretch(misses, music));
    misses.beats = {{43, 1, 9}};
    misses.placed = 9;
    CHECK(worstStretch(misses, music));
    music.bars = 0;
    CHECK_FALSE(worstStretch(misses, music));
}

namespace {

/// Every stretch, one after the other, as the text in the header says.
std::optional<BuildUpPart> naiveStretch(const Misses& misses, const Music& music) {
    if (music.bars == 0 || misses.placed < missesForAStretch) return std::nullopt;
    for (std::int32_t length = 1; length <= std::max(1, music.bars / 3); ++length) {
        std::int32_t best = 0;
        std::int32_t where = 0;
        for (std::int32_t first = music.firstBar; first + length <= music.firstBar + music.bars; ++first) {
            std::int32_t held = 0;
            for (std::int32_t bar = first; bar < first + length; ++bar) held += misses.inBar(bar);
            if (held <= best) continue;
            best = held;
            where = first;
        }
        const std::int32_t runUp = where > music.firstBar ? 1 : 0;
        if (2 * best >= misses.placed) return BuildUpPart{where - runUp, length + runUp};
    }
    return std::nullopt;
}

} // namespace

TEST_CASE("the worst stretch is that of a naive search, on random misses") {
    Dice dice(seed());
    int found = 0;
    for (int round = 0; round < 2000; ++round) {
        CAPTURE(round);
        Music music = nineBars();
        music.bars = 1 + roll(dice, 40);
        std::map<std::pair<int, int>, int> places;
        for (int count = roll(dice, 12); count > 0; --count)
            places[{40 + roll(dice, roll(dice, 2) == 0 ? 3 : 42), 1 + roll(dice, 4)}] += 1 + roll(dice, 5);
        Misses misses;
        for (const auto& [place, count] : places) {
            misses.beats.push_back({place.first, place.second, count});
            misses.placed += count;
        }
        const auto naive = naiveStretch(misses, music);
        const auto stretch = worstStretch(misses, music);
        REQUIRE(stretch.has_value() == naive.has_value());
        if (!naive) continue;
        ++found;
        REQUIRE(stretch->firstBar == naive->firstBar);
        REQUIRE(stretch->bars == naive->bars);
    }
    CHECK(found > 500);
}
