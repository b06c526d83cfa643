// SPDX-License-Identifier: GPL-3.0-or-later
// The sample practice folder is made by a program and looks like real practice.
#include "sample_folder.h"

#include "core/history/misses.h"
#include "core/history/notebook.h"
#include "core/rule/stage_step.h"
#include "core/scales/scale_grid.h"
#include "journal/folder/practice_folder.h"
#include "season.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <map>
#include <set>

using namespace piolo;
using namespace piolo::samples;

namespace {

const std::string folder = std::string(PIOLO_SOURCE_DIR) + "/samples/spring-concert";

const std::vector<Fact>& season() {
    static const std::vector<Fact> facts = playSeason(sampleSeed);
    return facts;
}

const Notebook& notebook() {
    static const Notebook folded = fold(season());
    return folded;
}

/// The records of pieces and exercises, or those of the scales.
std::vector<const PassageRecord*> recordsOf(const Notebook& from, bool scales) {
    std::vector<const PassageRecord*> all;
    for (const Id id : from.passages())
        if (from.passage(id)->passage.scale.has_value() == scales) all.push_back(from.passage(id));
    return all;
}

std::vector<const PassageRecord*> records() { return recordsOf(notebook(), false); }

std::set<Date> daysOf(const PassageRecord& record) {
    std::set<Date> days;
    for (const Entry& entry : record.entries) days.insert(entry.at.date());
    return days;
}

template <typename Holds>
int countOf(const Holds& holds) {
    int count = 0;
    for (const PassageRecord* record : records()) count += holds(*record) ? 1 : 0;
    return count;
}

} // namespace

TEST_CASE("the folder in the tree is what the program makes, byte for byte") {
    const auto same = sampleIsAsMade(folder, sampleSeed);
    REQUIRE(same);
    CHECK(*same);
    const auto other = sampleIsAsMade(folder, sampleSeed + 1);
    CHECK_FALSE((other && *other));
}

TEST_CASE("the folder is read without a fault and contains the season's facts") {
    const auto contents = journal::readFolder(folder, {});
    REQUIRE(contents);
    CHECK(contents->faults.empty());
    CHECK(contents->facts == season());
    CHECK(sampleFile(sampleSeed).bytes.size() < 2'000'000);
}

TEST_CASE("facts are in order, with unique numbers and ids") {
    std::set<Id> ids;
    for (std::size_t i = 0; i < season().size(); ++i) {
        CHECK(ids.insert(season()[i].id).second);
        CHECK(season()[i].seq == i + 1);
        if (i > 0) CHECK(season()[i - 1].order < season()[i].order);
    }
}

TEST_CASE("every run was played at the passage's current tempo") {
    int runs = 0;
    for (const PassageRecord* record : records()) {
        for (const Entry& entry : record->entries) {
            if (entry.kind != Entry::Kind::run) continue;
            ++runs;
            CHECK(entry.tempo == entry.before.tempo);
        }
    }
    CHECK(runs > 1000);
}

TEST_CASE("each day of each passage opens at the tempo given by the rule for a new day") {
    Notebook growing;
    std::map<Id, Date> last;
    for (const Fact& fact : season()) {
        const auto* run = std::get_if<RunFact>(&fact.body);
        const auto* tempo = std::get_if<TempoFact>(&fact.body);
        if (tempo != nullptr && tempo->reason == Reason::newDay)
            CHECK(growing.opening(tempo->passage, fact.at.date()) == tempo->tempo);
        if (run != nullptr && last[run->passage] != fact.at.date()) {
            CHECK_FALSE(growing.opening(run->passage, fact.at.date()));
            last[run->passage] = fact.at.date();
        }
        growing.add(fact);
    }
}

TEST_CASE("five weeks, ending on 18 April, with one missed day") {
    std::set<Date> days;
    for (const PassageRecord* record : records()) days.merge(daysOf(*record));
    CHECK(*days.begin() == Date{2026, 3, 15});
    CHECK(*days.rbegin() == Date{2026, 4, 18});
    CHECK(days.size() == 34);
    CHECK_FALSE(days.contains(Date{2026, 4, 2}));
}

TEST_CASE("on bad days fewer runs are clean than on others") {
    const auto share = [](std::set<Date> days, bool inside) {
        int runs = 0;
        int clean = 0;
        for (int day = 0; day < 35; ++day) {
            const Date date = Date::fromDaysSince1970(Date{2026, 3, 15}.daysSince1970() + day);
            if (days.contains(date) != inside) continue;
            const DayFigures figures = notebook().day(date, {});
            runs += figures.runs;
            clean += figures.clean;
        }
        REQUIRE(runs > 0);
        return 1000 * clean / runs;
    };
    const std::set<Date> bad{{2026, 3, 24}, {2026, 4, 9}, {2026, 4, 13}};
    CHECK(share(bad, true) + 10 < share(bad, false));
}

TEST_CASE("some passages are secure, one is just begun, the rest are on their way") {
    CHECK(countOf([](const PassageRecord& record) { return record.secureDays() >= 3; }) == 4);
    CHECK(countOf([](const PassageRecord& record) { return daysOf(record).size() <= 3; }) == 1);
    CHECK(countOf([](const PassageRecord& record) {
              return record.secureDays() < 3 && record.best && *record.best > record.passage.tempi.start;
          }) == 5);
}

TEST_CASE("the passages show what a part can contain") {
    const auto music = [](const PassageRecord& record) { return record.passage.music; };
    const auto meters = [&](const char* text, BeatUnit beat) {
        return countOf([&](const PassageRecord& record) {
            return music(record).meter.text() == text && music(record).meter.beat() == beat;
        });
    };
    CHECK(meters("6/8", BeatUnit::dottedQuarter) == 1);
    CHECK(meters("7/8", BeatUnit::eighth) == 1);
    CHECK(countOf([&](const PassageRecord& r) {
              return music(r).subdivision == 4 && !music(r).pickup.isZero();
          }) == 1);
    CHECK(countOf([&](const PassageRecord& r) {
              return music(r).bars >= 12 && r.passage.tempi.rule.cleanRuns == 3;
          }) == 1);
    CHECK(countOf([](const PassageRecord& r) { return r.passage.title.piece.isNone(); }) == 1);
    CHECK(countOf([](const PassageRecord& r) { return r.passage.tempi.rule.step == StepKind::notches; }) ==
          1);
    for (const Piece& piece : notebook().pieces()) {
        CHECK(piece.instrument == "Clarinet in B♭");
        CHECK(piece.due == Date{2026, 5, 9});
    }
}

TEST_CASE("every stage has a passage, and runs of its kind") {
    for (const StageInfo& info : stageTable) {
        CAPTURE(info.name);
        CHECK(countOf([&](const PassageRecord& record) { return record.stage == info.stage; }) > 0);
    }
    for (const Entry::Kind kind : {Entry::Kind::silent, Entry::Kind::context})
        CHECK(countOf([&](const PassageRecord& record) {
                  return std::any_of(record.entries.begin(), record.entries.end(),
                                     [&](const Entry& entry) { return entry.kind == kind; });
              }) > 1);
}

TEST_CASE("a stage was chosen only when the log supported it") {
    Notebook growing;
    for (const Fact& fact : season()) {
        if (const auto* said = std::get_if<StageFact>(&fact.body)) {
            const PassageRecord& record = *growing.passage(said->passage);
            const auto throughs = growing.runThroughs(record.passage.title.piece);
            const StageStep step = nextStep(record, throughs, growing.settings());
            CHECK(step.reached());
            CHECK(step.next == said->stage);
        }
        growing.add(fact);
    }
}

TEST_CASE("one passage breaks at one bar, and the run-throughs of the march get better") {
    const PassageRecord& suite =
        *notebook().passage(notebook().find("Ferrywake Suite, II: bars 41–44").front());
    const auto stretch = worstStretch(missesByBar(suite, 0), suite.passage.music);
    REQUIRE(stretch);
    CHECK(stretch->firstBar + stretch->bars - 1 == 43);
    for (const Piece& piece : notebook().pieces()) {
        const auto throughs = notebook().runThroughs(piece.id);
        if (piece.name != "Tallow Bridge March") {
            CHECK(throughs.empty());
            continue;
        }
        REQUIRE(throughs.size() == 6);
        CHECK(throughs.front().played.stops.size() > 3);
        CHECK(throughs.back().played.stops.empty());
        CHECK(throughs.back().played.millis < throughs.front().played.millis);
    }
}

TEST_CASE("the log has late misses, marks taken back, void runs and tries") {
    std::map<std::size_t, int> kinds;
    for (const Fact& fact : season()) ++kinds[fact.body.index()];
    CHECK(kinds[FactBody(LateMissFact{}).index()] > 5);
    CHECK(kinds[FactBody(BackFact{}).index()] > 5);
    CHECK(countOf([](const PassageRecord& record) {
              return std::any_of(record.entries.begin(), record.entries.end(),
                                 [](const Entry& entry) { return entry.mark == Mark::voided; });
          }) > 2);
    CHECK(countOf([](const PassageRecord& record) {
              return std::any_of(record.entries.begin(), record.entries.end(),
                                 [](const Entry& entry) { return entry.kind == Entry::Kind::attempt; });
          }) > 1);
}

TEST_CASE("another seed gives another season of the same shape") {
    const std::vector<Fact> other = playSeason(sampleSeed + 1);
    CHECK(other.front().id != season().front().id);
    CHECK(recordsOf(fold(other), false).size() == 9);
}

TEST_CASE("scales were practised in every subdivision and in all keys, and their grid is not full yet") {
    const ScaleSettings& settings = notebook().settings().scales;
    CHECK(settings.instrument == "clarinet in B flat");
    const ScaleGrid grid = gridOf(notebook(), settings.view, settings.instrument);
    int played = 0;
    int best = 0;
    std::set<int> keys;
    std::set<int> rows;
    for (std::int32_t notes = 1; notes <= Scale::mostNotesPerBeat; ++notes)
        for (int key = 0; key < keyCount; ++key) {
            const ScaleCell& cell = grid.at(notes, key);
            if (!cell.lastDay) continue;
            ++played;
            best += cell.best ? 1 : 0;
            keys.insert(key);
            rows.insert(notes);
        }
    CHECK(keys.size() == keyCount);
    CHECK(rows.size() == Scale::mostNotesPerBeat);
    CHECK(played > 30);
    CHECK(played < 84);
    CHECK(best > played / 2);
    for (const PassageRecord* record : recordsOf(notebook(), true))
        CHECK_FALSE(record->passage.notes.empty());
}
