// SPDX-License-Identifier: GPL-3.0-or-later
// Four passages of a folder, and a set of some of them in virtual time.
#pragma once

#include "../drill_fixture.h"
#include "practice/set/set_control.h"

#include <array>
#include <cstddef>
#include <tuple>
#include <vector>

namespace piolo::test {

/// A run as the journal has it, without what depends on the clock.
struct PlayedRun {
    std::size_t passage = 0; ///< its index in `ids`
    Tempo tempo = Tempo::bpm(60);
    Mark mark = Mark::clean;
    Reason reason = Reason::none;
    std::vector<Spot> spots;
    bool operator==(const PlayedRun&) const = default;
};

class SetFixture : public DrillFixture {
public:
    static constexpr std::size_t passages = 4;

    SetFixture() : DrillFixture(passage(0)), set(*book, *control) {
        ids[0] = passageId;
        for (std::size_t i = 1; i < passages; ++i) ids[i] = add(i);
    }

    /// The same four passages every time: two bars at a tempo of their own.
    static Passage passage(std::size_t index) {
        constexpr std::array tempi{84, 96, 72, 120};
        Passage passage = usual();
        passage.title.name = "Spring Dance, " + std::to_string(index);
        passage.music.bars = 2;
        passage.tempi.start = Tempo::bpm(tempi[index]);
        passage.tempi.rule.cleanRuns = 2;
        passage.tempi.rule.floor = Tempo::bpm(tempi[index] - 8);
        passage.tempi.rule.target = Tempo::bpm(tempi[index] + 6);
        return passage;
    }

    [[nodiscard]] std::vector<Id> first(std::size_t count) const {
        return {ids.begin(), ids.begin() + static_cast<std::ptrdiff_t>(count)};
    }
    bool startSet(std::size_t count, std::int32_t runs) {
        return set.start(first(count), {.by = practice::TurnLength::By::runs, .runs = runs});
    }
    /// Misses the next run in its first bar.
    void missNext() {
        REQUIRE(playUntil(engine::Event::Kind::runBegan));
        play(0.6);
        press();
    }
    void missThree() {
        for (int run = 0; run < 3; ++run) missNext();
        play(1);
    }
    /// No miss takes that passage below its start.
    void stayAtStart(std::size_t index) {
        Passage made = passage(index);
        made.tempi.rule.floor = made.tempi.start;
        book->record(PassageFact{ids[index], made.title, made.music, made.tempi});
    }
    /// Plays until that many runs have ended.
    void playRuns(int runs) {
        for (int run = 0; run < runs; ++run) REQUIRE(playUntil(engine::Event::Kind::runEnded));
        play(0.2); // it is heard
    }
    void stop() {
        control->stop();
        play(0.5);
        REQUIRE(control->state() == practice::DrillControl::State::stopped);
    }

    [[nodiscard]] std::vector<PlayedRun> runs() {
        std::vector<PlayedRun> played;
        for (const RunFact& run : onDisk<RunFact>())
            played.push_back({indexOf(run.passage), run.tempo, run.mark, run.reason, run.spots});
        return played;
    }
    [[nodiscard]] std::vector<std::size_t> turns() {
        std::vector<std::size_t> order;
        for (const PlayedRun& run : runs()) order.push_back(run.passage);
        return order;
    }
    [[nodiscard]] std::size_t indexOf(Id passage) const {
        return static_cast<std::size_t>(std::ranges::find(ids, passage) - ids.begin());
    }
    [[nodiscard]] Standing standingOf(std::size_t index) const {
        return book->notebook().passage(ids[index])->standing;
    }
    [[nodiscard]] bool playing() const { return control->state() == practice::DrillControl::State::playing; }

    std::array<Id, passages> ids;
    practice::SetControl set;

private:
    Id add(std::size_t index) {
        const Id id = book->newId();
        const Passage made = passage(index);
        book->record(PassageFact{id, made.title, made.music, made.tempi});
        return id;
    }
};

} // namespace piolo::test
