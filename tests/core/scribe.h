// SPDX-License-Identifier: GPL-3.0-or-later
// Records facts of one passage with short calls: ids, order and time count up automatically.
#pragma once

#include "core/history/notebook.h"

#include <optional>
#include <string>
#include <vector>

namespace piolo::testing {

[[nodiscard]] inline Date day(const char* text) { return *Date::parse(text); }

/// Drop 4, climb 2, five clean runs, 40 … 96, starting at 80.
[[nodiscard]] inline Tempi usualTempi() {
    Tempi tempi;
    tempi.start = Tempo::bpm(80);
    tempi.rule.target = Tempo::bpm(96);
    return tempi;
}

class Scribe {
public:
    Id passage{7, 7};
    std::string device = "stand";
    std::vector<Fact> facts;

    Scribe() { define(usualTempi()); }

    Id add(FactBody body) {
        ++count_;
        facts.push_back({Id{1, count_}, device, count_, static_cast<std::int64_t>(count_) * 10,
                         Timestamp{noon_ + static_cast<std::int64_t>(count_) * 1000, 0}, std::move(body)});
        return facts.back().id;
    }
    void turnTo(const char* date) { noon_ = day(date).daysSince1970() * 86'400'000 + 43'200'000; }

    Id define(const Tempi& tempi) {
        return add(PassageFact{passage, Title{"Run of sixteenths", {}}, Music{}, tempi});
    }
    Id edit(const Tempi& tempi) { return add(PassageFact{passage, {}, {}, tempi}); }
    Id manner(const Manner& manner) { return add(PassageFact{passage, {}, {}, {}, {}, manner}); }
    Id feel(BeatUnit beat) { return add(FeltBeatFact{passage, beat}); }
    Id run(std::int32_t bpm, Mark mark) {
        RunFact run;
        run.passage = passage;
        run.tempo = Tempo::bpm(bpm);
        run.mark = mark;
        run.millis = 10'000;
        return add(run);
    }
    Id runAt(Tempo tempo, Mark mark) {
        const Id id = run(60, mark);
        std::get<RunFact>(facts.back().body).tempo = tempo;
        return id;
    }
    Id apart(RunKind kind, std::int32_t bpm, Mark mark) {
        const Id id = run(bpm, mark);
        std::get<RunFact>(facts.back().body).kind = kind;
        return id;
    }
    Id tryOnce(std::int32_t bpm, Mark mark) { return apart(RunKind::attempt, bpm, mark); }
    /// A run at the passage's current tempo.
    Id here(Mark mark) { return runAt(standing().tempo, mark); }
    Id clean(int times = 1) {
        Id last;
        for (int run = 0; run < times; ++run) last = here(Mark::clean);
        return last;
    }
    Id miss() { return here(Mark::missed); }
    Id tempo(std::int32_t bpm, Reason reason = Reason::hand) {
        return add(TempoFact{passage, Tempo::bpm(bpm), reason});
    }
    Id late(Id run) { return add(LateMissFact{passage, run}); }
    Id doubt(std::vector<Id> runs) { return add(DoubtFact{passage, std::move(runs)}); }
    Id correct(Id fact, std::optional<Mark> mark = {}) { return add(CorrectionFact{passage, fact, mark}); }
    Id back(Id retracts) { return add(BackFact{passage, retracts}); }
    /// Takes back what `back` on this device would retract.
    Id back() {
        const Id target = notebook().backTarget(passage, device);
        if (!target.isNone()) back(target);
        return target;
    }

    [[nodiscard]] Notebook notebook() const { return fold(facts); }
    [[nodiscard]] PassageRecord record() const { return *notebook().passage(passage); }
    [[nodiscard]] Standing standing() const { return record().standing; }

private:
    std::uint64_t count_ = 0;
    std::int64_t noon_ = day("2026-03-01").daysSince1970() * 86'400'000 + 43'200'000;
};

[[nodiscard]] inline Standing at(std::int32_t bpm, std::int32_t streak) { return {Tempo::bpm(bpm), streak}; }

} // namespace piolo::testing
