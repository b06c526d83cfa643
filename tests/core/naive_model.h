// SPDX-License-Identifier: GPL-3.0-or-later
// A second, deliberately naive reading of the rule, for comparison: it keeps nothing, looks everything up in
// the whole list each time, and does its own arithmetic in thousandths.
#pragma once

#include "core/fact.h"

#include <algorithm>
#include <map>
#include <optional>
#include <set>
#include <vector>

namespace piolo::testing {

class NaiveModel {
public:
    struct Row {
        Id id;
        std::int32_t tempo = 0;
        std::int32_t streak = 0;
    };
    std::int32_t tempo = 0;
    std::int32_t streak = 0;
    std::int32_t best = 0;
    std::int32_t lastFull = 0;
    std::vector<std::int32_t> secures;
    std::vector<Row> rows;

    NaiveModel(const std::vector<Fact>& arrived, Id passage) {
        std::map<Id, Fact> unique;
        for (const Fact& fact : arrived) unique.emplace(fact.id, fact);
        for (const auto& [id, fact] : unique)
            if (passageOf(fact.body) == passage) facts_.push_back(fact);
        std::sort(facts_.begin(), facts_.end(), standsBefore);
        begin();
        for (const Fact& fact : facts_) step(fact);
    }

private:
    [[nodiscard]] bool retracted(Id id) const {
        return std::any_of(facts_.begin(), facts_.end(), [&](const Fact& fact) {
            const auto* back = std::get_if<BackFact>(&fact.body);
            return back != nullptr && back->retracts == id;
        });
    }
    [[nodiscard]] bool doubted(Id id) const {
        return std::any_of(facts_.begin(), facts_.end(), [&](const Fact& fact) {
            const auto* doubt = std::get_if<DoubtFact>(&fact.body);
            return doubt != nullptr && !retracted(fact.id) &&
                   std::find(doubt->runs.begin(), doubt->runs.end(), id) != doubt->runs.end();
        });
    }
    [[nodiscard]] bool lateMissed(Id id) const {
        return std::any_of(facts_.begin(), facts_.end(), [&](const Fact& fact) {
            const auto* late = std::get_if<LateMissFact>(&fact.body);
            return late != nullptr && !retracted(fact.id) && late->run == id;
        });
    }
    void begin() {
        for (const Fact& fact : facts_) {
            const auto* edit = std::get_if<PassageFact>(&fact.body);
            if (edit == nullptr || !edit->tempi || retracted(fact.id)) continue;
            tempi_ = *edit->tempi;
            tempo = tempi_.start.thousandths();
            return;
        }
    }
    void step(const Fact& fact) {
        if (retracted(fact.id)) return;
        if (const auto* edit = std::get_if<PassageFact>(&fact.body)) change(*edit);
        const auto* run = std::get_if<RunFact>(&fact.body);
        const auto* set = std::get_if<TempoFact>(&fact.body);
        if (run == nullptr && set == nullptr) return;
        if (fact.at.date().text() != day_) streak = 0;
        day_ = fact.at.date().text();
        if (set != nullptr) {
            tempo = set->tempo.thousandths();
            streak = 0;
            moved_ = true;
        } else if (run->kind == RunKind::run && run->mark != Mark::voided && !doubted(fact.id)) {
            play(run->tempo.thousandths(), run->mark == Mark::missed || lateMissed(fact.id));
        }
        rows.push_back({fact.id, tempo, streak});
    }
    void play(std::int32_t at, bool missed) {
        moved_ = true;
        if (at != tempo) streak = 0;
        tempo = at;
        const std::int32_t floor = tempi_.rule.floor.thousandths();
        if (missed) {
            streak = 0;
            if (tempo > floor) tempo = std::max(floor, moved(-tempi_.rule.drop));
            return;
        }
        if (++streak < tempi_.rule.cleanRuns) return;
        streak = 0;
        best = std::max(best, tempo);
        lastFull = tempo;
        const std::int32_t target = tempi_.rule.target.thousandths();
        if (tempo >= target)
            secures.push_back(tempo);
        else
            tempo = std::min(target, moved(tempi_.rule.climb));
    }
    void change(const PassageFact& edit) {
        if (!edit.tempi) return;
        tempi_ = *edit.tempi;
        const std::int32_t before = tempo;
        tempo = std::max(tempo, tempi_.rule.floor.thousandths());
        tempo = std::min(tempo, tempi_.rule.target.thousandths());
        if (!moved_) tempo = tempi_.start.thousandths();
        if (tempo != before) streak = 0;
        std::vector<std::int32_t> kept;
        for (const std::int32_t secure : secures)
            if (secure >= tempi_.rule.target.thousandths()) kept.push_back(secure);
        secures = kept;
    }
    /// The tempo `size` steps from here.
    [[nodiscard]] std::int32_t moved(std::int32_t size) const {
        if (tempi_.rule.step == StepKind::bpm) return std::clamp(tempo + size * 1000, 10'000, 400'000);
        std::set<std::int32_t> marks;
        for (std::int32_t mark = 10; mark < 60; mark += 2) marks.insert(mark * 1000);
        for (std::int32_t mark = 60; mark < 72; mark += 3) marks.insert(mark * 1000);
        for (std::int32_t mark = 72; mark < 120; mark += 4) marks.insert(mark * 1000);
        for (std::int32_t mark = 120; mark < 144; mark += 6) marks.insert(mark * 1000);
        for (std::int32_t mark = 144; mark <= 400; mark += 8) marks.insert(mark * 1000);
        std::int32_t at = tempo;
        for (; size > 0; --size) {
            const auto above = marks.upper_bound(at);
            at = above == marks.end() ? 400'000 : *above;
        }
        for (; size < 0; ++size) {
            const auto here = marks.lower_bound(at);
            at = here == marks.begin() ? 10'000 : *std::prev(here);
        }
        return at;
    }

    std::vector<Fact> facts_;
    Tempi tempi_;
    std::string day_;
    bool moved_ = false;
};

} // namespace piolo::testing
