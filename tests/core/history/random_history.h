// SPDX-License-Identifier: GPL-3.0-or-later
// Random histories of one passage: everything that can happen, in any order, on two devices.
#pragma once

#include "../scribe.h"
#include "../seed.h"

#include <algorithm>
#include <array>

namespace piolo::testing {

class RandomHistory {
public:
    RandomHistory(Dice& dice, int facts) : dice_(dice) {
        for (int fact = 0; fact < facts; ++fact) another();
        blur();
    }
    [[nodiscard]] const std::vector<Fact>& facts() const { return scribe_.facts; }
    [[nodiscard]] Id passage() const { return scribe_.passage; }

private:
    [[nodiscard]] Tempo anyTempo() { return *Tempo::fromThousandths(10'000 + roll(dice_, 390'001)); }
    [[nodiscard]] Id anyId() {
        const auto count = static_cast<std::int32_t>(scribe_.facts.size());
        return scribe_.facts[static_cast<std::size_t>(roll(dice_, count))].id;
    }
    [[nodiscard]] Tempi anyTempi() {
        Tempi tempi;
        std::array<Tempo, 3> tempos{anyTempo(), anyTempo(), anyTempo()};
        std::sort(tempos.begin(), tempos.end());
        tempi.rule.floor = tempos[0];
        tempi.start = tempos[1];
        tempi.rule.target = tempos[2];
        tempi.rule.step = roll(dice_, 2) == 0 ? StepKind::bpm : StepKind::notches;
        tempi.rule.drop = 1 + roll(dice_, 8);
        tempi.rule.climb = 1 + roll(dice_, 8);
        tempi.rule.cleanRuns = 1 + roll(dice_, 4);
        tempi.rule.gentle = roll(dice_, 2) == 0;
        return tempi;
    }
    /// Close enough to each other to be climbed, and to be felt in other beats.
    [[nodiscard]] Tempi playableTempi() {
        Tempi tempi;
        tempi.rule.floor = Tempo::bpm(40 + 2 * roll(dice_, 10));
        tempi.start = Tempo::bpm(60 + 4 * roll(dice_, 4));
        tempi.rule.target = Tempo::bpm(76 + 4 * roll(dice_, 4));
        tempi.rule.step = roll(dice_, 2) == 0 ? StepKind::bpm : StepKind::notches;
        tempi.rule.drop = 2 + 2 * roll(dice_, 2);
        tempi.rule.climb = tempi.rule.step == StepKind::bpm ? 2 : 1;
        tempi.rule.cleanRuns = 1 + roll(dice_, 3);
        tempi.rule.gentle = roll(dice_, 3) != 0;
        return tempi;
    }
    /// A run at the passage's current tempo, unless its definition was taken back.
    void here(Mark mark) {
        const Notebook notebook = scribe_.notebook();
        const PassageRecord* const record = notebook.passage(scribe_.passage);
        if (record != nullptr) scribe_.runAt(record->standing.tempo, mark);
    }
    void edit() {
        Manner manner;
        switch (roll(dice_, 3)) {
        case 0:
            scribe_.edit(anyTempi());
            break;
        case 1:
            scribe_.edit(playableTempi());
            break;
        default:
            manner.articulation = static_cast<Articulation>(roll(dice_, 2));
            manner.rhythm = static_cast<Rhythm>(roll(dice_, 4));
            manner.group = 3 + roll(dice_, 2);
            manner.fingering = roll(dice_, 2) == 0 ? "side B flat" : "";
            scribe_.manner(manner);
        }
    }
    /// Of a few days around now.
    void clock() {
        const std::int64_t from = day_ - roll(dice_, 3);
        scribe_.add(
            ClockFact{roll(dice_, 2) == 0 ? "pit" : "stand", Date::fromDaysSince1970(from),
                      Date::fromDaysSince1970(from + roll(dice_, 3)),
                      static_cast<std::uint64_t>(roll(dice_, 2 + 2 * static_cast<int>(scribe_.facts.size()))),
                      roll(dice_, 7) - 3});
    }
    void another() {
        scribe_.device = roll(dice_, 3) == 0 ? "pit" : "stand";
        switch (roll(dice_, 23)) {
        case 20:
            scribe_.correct(anyId());
            break;
        case 21:
            scribe_.correct(anyId(), static_cast<Mark>(roll(dice_, 3)));
            break;
        case 22:
            clock();
            break;
        case 0:
            scribe_.tempo(10 + roll(dice_, 391));
            break;
        case 1:
            edit();
            break;
        case 2:
            scribe_.back(anyId());
            break;
        case 3:
            scribe_.late(anyId());
            break;
        case 4:
            scribe_.doubt({anyId(), anyId()});
            break;
        case 5:
            day_ += roll(dice_, 2);
            scribe_.turnTo(Date::fromDaysSince1970(day_).text().c_str());
            break;
        case 6:
            scribe_.apart(static_cast<RunKind>(1 + roll(dice_, 4)), 60 + roll(dice_, 60),
                          roll(dice_, 2) == 0 ? Mark::clean : Mark::missed);
            break;
        case 7:
            scribe_.run(60 + roll(dice_, 60), Mark::voided);
            break;
        case 9:
            scribe_.feel(std::array{BeatUnit::half, BeatUnit::quarter,
                                    BeatUnit::eighth}[static_cast<std::size_t>(roll(dice_, 3))]);
            break;
        case 10:
        case 11:
        case 12:
            here(roll(dice_, 4) == 0 ? Mark::missed : Mark::clean);
            break;
        case 8:
            tempo_ = 10 + roll(dice_, 391);
            break;
        default:
            scribe_.run(tempo_, roll(dice_, 8) == 0 ? Mark::missed : Mark::clean);
        }
    }
    /// Two devices that do not know of each other sometimes assign the same order.
    void blur() {
        for (Fact& fact : scribe_.facts) fact.order -= fact.order % 30;
    }

    Dice& dice_;
    Scribe scribe_;
    std::int64_t day_ = 20'513;
    std::int32_t tempo_ = 80;
};

inline void shuffle(std::vector<Fact>& facts, Dice& dice) {
    for (std::size_t left = facts.size(); left > 1; --left)
        std::swap(facts[left - 1],
                  facts[static_cast<std::size_t>(roll(dice, static_cast<std::int32_t>(left)))]);
}

} // namespace piolo::testing
