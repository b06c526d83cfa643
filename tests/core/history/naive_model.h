// SPDX-License-Identifier: GPL-3.0-or-later
// A second, deliberately naive implementation of the rule, for comparison: it stores nothing, searches the
// whole list each time, and does its own arithmetic in thousandths.
#pragma once

#include "core/history/fact.h"

#include <algorithm>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

namespace piolo::testing {

class NaiveModel {
public:
    struct Row {
        Id id;
        Mark mark = Mark::clean;
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
        for (const auto& [id, fact] : unique) {
            if (passageOf(fact.body) == passage) facts_.push_back(fact);
            if (std::holds_alternative<ClockFact>(fact.body)) clocks_.push_back(fact);
        }
        std::sort(clocks_.begin(), clocks_.end(), standsBefore);
        std::sort(facts_.begin(), facts_.end(), standsBefore);
        begin();
        for (const Fact& fact : facts_) step(fact);
    }

    [[nodiscard]] bool spared() const { return misses_ == 1; }

private:
    [[nodiscard]] bool isCorrection(Id id) const {
        return std::any_of(facts_.begin(), facts_.end(), [&](const Fact& fact) {
            return fact.id == id && std::holds_alternative<CorrectionFact>(fact.body);
        });
    }
    [[nodiscard]] bool named(Id id) const {
        return std::any_of(facts_.begin(), facts_.end(), [&](const Fact& fact) {
            const auto* back = std::get_if<BackFact>(&fact.body);
            return back != nullptr && back->retracts == id;
        });
    }
    /// The correction of that fact, if it is one that counts.
    [[nodiscard]] const CorrectionFact* correctionOf(Id id, const Fact& fact) const {
        const auto* correction = std::get_if<CorrectionFact>(&fact.body);
        const bool counts = correction != nullptr && correction->corrects == id && !named(fact.id);
        return counts && !isCorrection(id) ? correction : nullptr;
    }
    /// The last word on that fact, read from the end, is a back.
    [[nodiscard]] bool retracted(Id id) const {
        for (auto fact = facts_.rbegin(); fact != facts_.rend(); ++fact) {
            const auto* back = std::get_if<BackFact>(&fact->body);
            if (back != nullptr && back->retracts == id) return true;
            if (correctionOf(id, *fact) != nullptr) return false;
        }
        return false;
    }
    /// What was said of a run's mark, one after the other.
    [[nodiscard]] Mark marked(Id id, Mark mark) const {
        for (const Fact& fact : facts_) {
            if (const CorrectionFact* correction = correctionOf(id, fact))
                mark = correction->mark.value_or(mark);
            if (retracted(fact.id)) continue;
            const auto* late = std::get_if<LateMissFact>(&fact.body);
            if (late != nullptr && late->run == id && mark == Mark::clean) mark = Mark::missed;
            const auto* doubt = std::get_if<DoubtFact>(&fact.body);
            if (doubt != nullptr && std::count(doubt->runs.begin(), doubt->runs.end(), id) > 0)
                mark = Mark::voided;
        }
        return mark;
    }
    /// The date as the last clock fact moves it that is about the fact.
    [[nodiscard]] std::string dayOf(const Fact& fact) const {
        const Date date = fact.at.date();
        std::string text = date.text();
        for (const Fact& each : clocks_) {
            const auto& clock = std::get<ClockFact>(each.body);
            if (clock.of != fact.device || fact.seq > clock.until) continue;
            if (date < clock.from || clock.to < date) continue;
            text = Date::fromDaysSince1970(date.daysSince1970() + clock.days).text();
        }
        return text;
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
        if (const auto* felt = std::get_if<FeltBeatFact>(&fact.body)) feel(felt->beat);
        const auto* run = std::get_if<RunFact>(&fact.body);
        const auto* set = std::get_if<TempoFact>(&fact.body);
        if (run == nullptr && set == nullptr) return;
        if (dayOf(fact) != day_) streak = misses_ = 0;
        day_ = dayOf(fact);
        if (set != nullptr) {
            tempo = set->tempo.thousandths();
            streak = misses_ = 0;
            moved_ = true;
        }
        const Mark mark = run == nullptr ? Mark::clean : marked(fact.id, run->mark);
        if (run != nullptr && run->kind == RunKind::run && mark != Mark::voided)
            play(run->tempo.thousandths(), mark == Mark::missed);
        rows.push_back({fact.id, mark, tempo, streak});
    }
    void play(std::int32_t at, bool missed) {
        moved_ = true;
        if (at != tempo) streak = misses_ = 0;
        tempo = at;
        const std::int32_t floor = tempi_.rule.floor.thousandths();
        if (missed) {
            streak = 0;
            if (tempo > floor)
                miss(floor);
            else
                misses_ = 0;
            return;
        }
        misses_ = 0;
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
    /// The number of steps from here to the target, counted up to three.
    [[nodiscard]] int climbsLeft() const {
        int climbs = 0;
        std::int32_t at = tempo;
        for (; climbs < 3 && at < tempi_.rule.target.thousandths(); ++climbs)
            at = movedFrom(at, tempi_.rule.climb);
        return climbs;
    }
    void miss(std::int32_t floor) {
        const int left = tempi_.rule.gentle ? climbsLeft() : 3;
        if (left == 0 && ++misses_ % 2 == 1) return;
        tempo = std::max(floor, moved(-(left <= 2 ? tempi_.rule.climb : tempi_.rule.drop)));
        misses_ = 0;
    }
    void change(const PassageFact& edit) {
        if (edit.manner) {
            const auto& [articulation, rhythm, group, words] = *edit.manner;
            const bool inGroups = rhythm == Rhythm::groups;
            if (articulation != manner_.articulation || rhythm != manner_.rhythm ||
                (inGroups && group != manner_.group))
                streak = misses_ = 0;
            manner_ = *edit.manner;
        }
        if (edit.music) parts_ = 4, pulses_ = 1;
        if (!edit.tempi) return;
        tempi_ = *edit.tempi;
        const std::int32_t before = tempo;
        tempo = std::max(tempo, tempi_.rule.floor.thousandths());
        tempo = std::min(tempo, tempi_.rule.target.thousandths());
        if (!moved_) tempo = tempi_.start.thousandths();
        if (tempo != before) streak = misses_ = 0;
        if (!moved_) streak = misses_ = 0;
        if (!tempi_.rule.gentle || tempo < tempi_.rule.target.thousandths()) misses_ = 0;
        std::vector<std::int32_t> kept;
        for (const std::int32_t secure : secures)
            if (secure >= tempi_.rule.target.thousandths()) kept.push_back(secure);
        secures = kept;
    }
    /// Multiplies everything by the ratio of the beats if the results are exact; the music is 4/4 in
    /// quarters, undivided.
    void feel(BeatUnit beat) {
        const int parts = beat == BeatUnit::half ? 2 : beat == BeatUnit::quarter ? 4 : 8;
        const auto exact = [&](std::int64_t value, std::int64_t least, std::int64_t most) {
            const std::int64_t product = value * parts;
            return product % parts_ == 0 && product / parts_ >= least && product / parts_ <= most;
        };
        const auto turned = [&](std::int64_t value) {
            return static_cast<std::int32_t>((2 * value * parts + parts_) / (2 * parts_));
        };
        const auto tempoOf = [&](std::int32_t& thousandths) {
            thousandths = std::clamp(turned(thousandths), 10'000, 400'000);
        };
        Rule& rule = tempi_.rule;
        for (const Tempo each : {tempi_.start, rule.target, rule.floor})
            if (!exact(each.thousandths(), 10'000, 400'000)) return;
        if (!exact(tempo, 10'000, 400'000)) return;
        if (rule.step == StepKind::bpm && !(exact(rule.drop, 1, 100) && exact(rule.climb, 1, 100))) return;
        if (rule.step == StepKind::notches && parts != parts_) {
            for (std::int32_t at = rule.floor.thousandths(); at < rule.target.thousandths();) {
                const std::int32_t above = movedFrom(at, 1);
                if (!exact(at, 10'000, 400'000) || !exact(above, 10'000, 400'000)) return;
                if (movedFrom(turned(at), 1) != turned(above)) return;
                at = above;
            }
        }
        if (pulses_ * parts_ % parts == 0)
            pulses_ = pulses_ * parts_ / parts;
        else if (pulses_ != 1)
            return;
        if (pulses_ > 8) return;
        tempi_.start = Tempo::clampedThousandths(turned(tempi_.start.thousandths()));
        rule.target = Tempo::clampedThousandths(turned(rule.target.thousandths()));
        rule.floor = Tempo::clampedThousandths(turned(rule.floor.thousandths()));
        if (rule.step == StepKind::bpm) {
            rule.drop = turned(rule.drop);
            rule.climb = turned(rule.climb);
        }
        tempoOf(tempo);
        if (best != 0) tempoOf(best);
        if (lastFull != 0) tempoOf(lastFull);
        for (std::int32_t& secure : secures) tempoOf(secure);
        for (Row& row : rows) tempoOf(row.tempo);
        parts_ = parts;
    }
    /// The tempo `size` steps from here.
    [[nodiscard]] std::int32_t moved(std::int32_t size) const { return movedFrom(tempo, size); }
    [[nodiscard]] std::int32_t movedFrom(std::int32_t from, std::int32_t size) const {
        if (tempi_.rule.step == StepKind::bpm) return std::clamp(from + size * 1000, 10'000, 400'000);
        std::set<std::int32_t> marks;
        for (std::int32_t mark = 10; mark < 60; mark += 2) marks.insert(mark * 1000);
        for (std::int32_t mark = 60; mark < 72; mark += 3) marks.insert(mark * 1000);
        for (std::int32_t mark = 72; mark < 120; mark += 4) marks.insert(mark * 1000);
        for (std::int32_t mark = 120; mark < 144; mark += 6) marks.insert(mark * 1000);
        for (std::int32_t mark = 144; mark <= 400; mark += 8) marks.insert(mark * 1000);
        std::int32_t at = from;
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
    std::vector<Fact> clocks_;
    Tempi tempi_;
    std::string day_;
    Manner manner_;
    bool moved_ = false;
    int misses_ = 0; ///< in a row, at the target of a gentle rule
    int parts_ = 4;  ///< the beat, as a fraction of a whole note: 1/parts_
    int pulses_ = 1; ///< pulses per beat
};

} // namespace piolo::testing
