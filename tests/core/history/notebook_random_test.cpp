// SPDX-License-Identifier: GPL-3.0-or-later
// Laws of the fold on random histories. PIOLO_SEED repeats a failure.
#include "naive_model.h"
#include "random_history.h"

#include <doctest/doctest.h>

#include <iostream>

using namespace piolo;
using namespace piolo::testing;

namespace {

bool same(const Entry& a, const Entry& b) {
    return a.id == b.id && a.kind == b.kind && a.mark == b.mark && a.late == b.late &&
           a.corrected == b.corrected && a.at == b.at && a.tempo == b.tempo && a.fullStreak == b.fullStreak &&
           a.before == b.before && a.after == b.after;
}

bool same(const PassageRecord* a, const PassageRecord* b) {
    if (a == nullptr || b == nullptr) return a == b;
    const auto sameSecure = [](const Secure& x, const Secure& y) {
        return x.day == y.day && x.tempo == y.tempo;
    };
    const auto sameEntry = [](const Entry& x, const Entry& y) { return same(x, y); };
    return a->passage == b->passage && a->standing == b->standing && a->best == b->best &&
           a->lastFullStreak == b->lastFullStreak && a->lastDay == b->lastDay &&
           std::equal(a->secures.begin(), a->secures.end(), b->secures.begin(), b->secures.end(),
                      sameSecure) &&
           std::equal(a->entries.begin(), a->entries.end(), b->entries.begin(), b->entries.end(), sameEntry);
}

bool agrees(const PassageRecord& record, const NaiveModel& model) {
    const auto sameRow = [](const Entry& entry, const NaiveModel::Row& row) {
        const bool isTempo = entry.kind == Entry::Kind::tempo;
        return entry.id == row.id && (isTempo || entry.mark == row.mark) &&
               entry.after.tempo.thousandths() == row.tempo && entry.after.streak == row.streak;
    };
    const auto sameSecure = [](const Secure& secure, std::int32_t tempo) {
        return secure.tempo.thousandths() == tempo;
    };
    return record.standing.tempo.thousandths() == model.tempo && record.standing.streak == model.streak &&
           record.standing.spared == model.spared() &&
           (record.best ? record.best->thousandths() : 0) == model.best &&
           (record.lastFullStreak ? record.lastFullStreak->thousandths() : 0) == model.lastFull &&
           std::equal(record.secures.begin(), record.secures.end(), model.secures.begin(),
                      model.secures.end(), sameSecure) &&
           std::equal(record.entries.begin(), record.entries.end(), model.rows.begin(), model.rows.end(),
                      sameRow);
}

/// How many of its runs and tempi have another date than recorded.
int redatedIn(const RandomHistory& history, const PassageRecord& record) {
    const auto& facts = history.facts();
    return static_cast<int>(
        std::count_if(record.entries.begin(), record.entries.end(), [&](const Entry& entry) {
            return std::none_of(facts.begin(), facts.end(),
                                [&](const Fact& fact) { return fact.id == entry.id && fact.at == entry.at; });
        }));
}

Dice seededDice() {
    std::cout << "PIOLO_SEED=" << seed() << '\n';
    return Dice(seed());
}

} // namespace

TEST_CASE("the fold agrees with a naive second reading of the rule") {
    Dice dice = seededDice();
    int defined = 0;
    int secures = 0;
    int felt = 0;
    int spared = 0;
    int corrected = 0;
    int redated = 0;
    for (int round = 0; round < 400; ++round) {
        CAPTURE(seed());
        CAPTURE(round);
        const RandomHistory history(dice, 1 + roll(dice, 120));
        const Notebook notebook = fold(history.facts());
        const PassageRecord* const record = notebook.passage(history.passage());
        if (record == nullptr) continue; // its only definition was taken back
        ++defined;
        secures += static_cast<int>(record->secures.size());
        felt += record->passage.music.meter.beat() == BeatUnit::quarter ? 0 : 1;
        spared += static_cast<int>(std::count_if(record->entries.begin(), record->entries.end(),
                                                 [](const Entry& entry) { return entry.after.spared; }));
        corrected += static_cast<int>(std::count_if(record->entries.begin(), record->entries.end(),
                                                    [](const Entry& entry) { return entry.corrected; }));
        redated += redatedIn(history, *record);
        REQUIRE(agrees(*record, NaiveModel(history.facts(), history.passage())));
    }
    CHECK(defined > 300);
    CHECK(secures > 30);
    CHECK(felt > 30);
    CHECK(spared > 30);
    CHECK(corrected > 100);
    CHECK(redated > 100);
}

TEST_CASE("the same facts in any order of arrival, some twice, give the same notebook") {
    Dice dice = seededDice();
    for (int round = 0; round < 300; ++round) {
        CAPTURE(seed());
        CAPTURE(round);
        const RandomHistory history(dice, 60);
        std::vector<Fact> arrived = history.facts();
        for (int twice = 0; twice < 10; ++twice)
            arrived.push_back(
                arrived[static_cast<std::size_t>(roll(dice, 60) % static_cast<int>(arrived.size()))]);
        shuffle(arrived, dice);
        const Notebook one = fold(history.facts());
        const Notebook other = fold(arrived);
        REQUIRE(one.factCount() == other.factCount());
        REQUIRE(same(one.passage(history.passage()), other.passage(history.passage())));
        for (const char* device : {"pit", "stand"})
            REQUIRE(one.backTarget(history.passage(), device) == other.backTarget(history.passage(), device));
    }
}

TEST_CASE("a notebook read after every fact is the same as one read once") {
    Dice dice = seededDice();
    for (int round = 0; round < 150; ++round) {
        CAPTURE(seed());
        CAPTURE(round);
        const RandomHistory history(dice, 60);
        std::vector<Fact> arrived = history.facts();
        if (round % 2 == 0) shuffle(arrived, dice);
        Notebook growing;
        std::vector<Fact> sofar;
        for (const Fact& fact : arrived) {
            growing.add(fact);
            sofar.push_back(fact);
            const Notebook whole = fold(sofar);
            REQUIRE(same(growing.passage(history.passage()), whole.passage(history.passage())));
        }
    }
}

TEST_CASE("whatever is marked, taking everything back leads to where it began") {
    Dice dice = seededDice();
    for (int round = 0; round < 100; ++round) {
        CAPTURE(seed());
        CAPTURE(round);
        Scribe scribe;
        const int marks = 1 + roll(dice, 25);
        for (int mark = 0; mark < marks; ++mark) {
            const int what = roll(dice, 7);
            if (what == 6)
                scribe.correct(scribe.clean(), Mark::missed);
            else if (what == 0)
                scribe.tempo(40 + roll(dice, 60));
            else if (what == 1)
                scribe.miss();
            else if (what == 2)
                scribe.late(scribe.clean());
            else
                scribe.clean();
        }
        std::vector<Standing> standings;
        while (!scribe.back().isNone()) standings.push_back(scribe.standing());
        REQUIRE(standings.size() >= static_cast<std::size_t>(marks));
        REQUIRE(standings.back() == at(80, 0));
        REQUIRE(scribe.record().entries.empty());
    }
}

TEST_CASE("with runs at the current tempo, floor and target are never passed") {
    Dice dice = seededDice();
    for (const StepKind kind : {StepKind::bpm, StepKind::notches}) {
        Rule rule;
        rule.step = kind;
        rule.drop = 3;
        rule.climb = 5;
        rule.cleanRuns = 2;
        rule.floor = Tempo::bpm(47);
        rule.target = Tempo::bpm(101);
        Standing standing{Tempo::bpm(60), 0};
        bool floor = false;
        bool target = false;
        for (int run = 0; run < 20'000; ++run) {
            const bool streaky = run / 500 % 2 == 0;
            const Mark mark = roll(dice, 10) < (streaky ? 9 : 4) ? Mark::clean : Mark::missed;
            standing = afterRun(standing, standing.tempo, mark, rule).after;
            REQUIRE(standing.tempo >= rule.floor);
            REQUIRE(standing.tempo <= rule.target);
            REQUIRE(standing.streak >= 0);
            REQUIRE(standing.streak < rule.cleanRuns);
            floor = floor || standing.tempo == rule.floor;
            target = target || standing.tempo == rule.target;
        }
        CHECK((floor && target));
    }
}

TEST_CASE("folding ahead, in parts and in any order, changes nothing") {
    Dice dice = seededDice();
    std::vector<Fact> facts;
    std::vector<Id> passages;
    for (std::uint64_t passage = 1; passage <= 7; ++passage) {
        const RandomHistory history(dice, 60);
        for (Fact fact : history.facts()) {
            fact.id.low += passage * 1'000'000;
            std::visit(
                [&](auto& body) {
                    if constexpr (requires { body.passage; }) body.passage = Id{9, passage};
                    if constexpr (requires { body.retracts; }) body.retracts.low += passage * 1'000'000;
                    if constexpr (requires { body.run; }) body.run.low += passage * 1'000'000;
                    if constexpr (requires { body.corrects; }) body.corrects.low += passage * 1'000'000;
                },
                fact.body);
            facts.push_back(std::move(fact));
        }
        passages.push_back(Id{9, passage});
    }
    const Notebook asked = fold(facts);
    Notebook ahead = fold(facts);
    std::size_t foldedAhead = 0;
    for (const std::size_t part : {2U, 0U, 1U}) {
        const std::size_t share = ahead.foldAhead(part, 3);
        CHECK(share > 0);
        CHECK(share < passages.size());
        foldedAhead += share;
    }
    CHECK(foldedAhead == passages.size());
    for (const std::size_t part : {0U, 1U, 2U}) CHECK(ahead.foldAhead(part, 3) == 0);
    for (const Id passage : passages) CHECK(same(ahead.passage(passage), asked.passage(passage)));
    CHECK(ahead.passages() == asked.passages());
}

TEST_CASE("passages that were removed are not folded ahead, and one more fact is folded again") {
    std::vector<Fact> facts;
    Scribe kept;
    Scribe removed;
    facts.insert(facts.end(), kept.facts.begin(), kept.facts.end());
    for (Fact fact : removed.facts) {
        fact.id.low += 1'000;
        std::get<PassageFact>(fact.body).passage = Id{7, 8};
        facts.push_back(fact);
    }
    Fact removal = facts.back();
    removal.id = Id{2, 1};
    removal.body = RemovalFact{Id{7, 8}, true};
    facts.push_back(removal);
    Notebook notebook = fold(facts);
    CHECK(notebook.foldAhead(0, 1) == 1);
    CHECK(notebook.foldAhead(0, 1) == 0);
    kept.clean();
    notebook.add(kept.facts.back());
    CHECK(notebook.foldAhead(0, 1) == 1);
}
