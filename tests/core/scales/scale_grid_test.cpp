// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/scales/scale_grid.h"

#include "../scribe.h"
#include "core/scales/scale_passage.h"
#include "core/scales/scale_proposal.h"
#include "core/scales/scale_weeks.h"

#include <algorithm>
#include <doctest/doctest.h>

using namespace piolo;
using namespace piolo::testing;

namespace {

constexpr ScaleView view{ScaleKind::major, ScaleRange::twoOctaves, ScalePattern::inOrder};
constexpr Date today{2026, 3, 1};

/// A scribe whose passages are scales.
class Scales : public Scribe {
public:
    Id make(Id id, Tonic tonic, std::int32_t notes, std::string instrument = "oboe") {
        passage = id;
        Tempi tempi;
        tempi.start = Tempo::bpm(60);
        tempi.rule.cleanRuns = 2;
        PassageFact fact{id, Title{"A scale", {}, {}}, Music{}, tempi};
        fact.scale = Scale{tonic, view.kind, view.range, view.pattern, notes, std::move(instrument)};
        add(fact);
        return id;
    }
    void fill(std::int32_t bpm) {
        run(bpm, Mark::clean);
        run(bpm, Mark::clean);
    }
    [[nodiscard]] ScaleGrid grid() const { return gridOf(notebook(), view, "oboe"); }
};

ScaleGrid allPlayed(Date day, std::int32_t bpm) {
    ScaleGrid grid;
    for (std::int32_t notes = 1; notes <= 7; ++notes)
        for (int key = 0; key < keyCount; ++key) {
            grid.at(notes, key).lastDay = day;
            grid.at(notes, key).best = Tempo::bpm(bpm);
        }
    return grid;
}

const auto byFourths = keysInOrder(KeyOrder::fourths, 0);

} // namespace

TEST_CASE(
    "a cell shows the best of its scale; the two names of a key share it, another instrument does not") {
    Scales scribe;
    scribe.make({7, 1}, {'D', -1}, 5);
    scribe.fill(60);
    scribe.make({7, 2}, {'C', 1}, 5);
    scribe.fill(72);
    scribe.run(74, Mark::clean);
    scribe.make({7, 3}, {'D', -1}, 5, "tuba");
    scribe.fill(99);
    const ScaleCell cell = scribe.grid().at(5, 1);
    CHECK(cell.best == Tempo::bpm(72));
    CHECK(cell.passage == Id{7, 2});
    CHECK(cell.tempo == Tempo::bpm(74));
    CHECK(cell.streak == 1);
    CHECK(cell.cleanRuns == 2);
    CHECK(cell.lastDay.has_value());
    CHECK_FALSE(scribe.grid().at(4, 1).best.has_value());
    CHECK(gridOf(scribe.notebook(), {ScaleKind::blues, view.range, view.pattern}, "oboe")
              .at(5, 1)
              .passage.isNone());
}

TEST_CASE("a cell is secure with as many secures on different days as the settings require") {
    Scales scribe;
    PracticeSettings settings;
    settings.secureDays = 2;
    scribe.add(SettingsFact{settings});
    scribe.make({7, 1}, {'D', -1}, 5);
    const std::int32_t target = scribe.record().passage.tempi.rule.target.thousandths() / 1000;
    CHECK_FALSE(scribe.grid().at(5, 1).secure);
    scribe.fill(target);
    CHECK_FALSE(scribe.grid().at(5, 1).secure);
    scribe.turnTo("2026-03-02");
    scribe.fill(target);
    CHECK(scribe.grid().at(5, 1).secure);
}

TEST_CASE("of two passages in one cell, the one played last is shown; setting a tempo is not playing") {
    Scales scribe;
    scribe.make({7, 1}, {'D', -1}, 5);
    CHECK(scribe.grid().at(5, 1).passage == Id{7, 1});
    scribe.make({7, 2}, {'C', 1}, 5);
    scribe.run(60, Mark::missed);
    scribe.passage = {7, 1};
    scribe.tempo(72);
    CHECK(scribe.grid().at(5, 1).passage == Id{7, 2});
    scribe.run(72, Mark::clean);
    CHECK(scribe.grid().at(5, 1).passage == Id{7, 1});
}

TEST_CASE("the newest scale of a passage counts in any order of arrival, and no other group removes it") {
    Scales scribe;
    const Id id = scribe.make({7, 1}, {'D', -1}, 5);
    PassageFact turned{id, {}, {}, {}};
    turned.scale = scribe.record().passage.scale;
    turned.scale->tonic = {'C', 1};
    scribe.add(turned);
    scribe.add(PassageFact{id, Title{"By heart", {}, {}}, {}, {}});
    CHECK(scribe.record().passage.scale == turned.scale);
    std::ranges::reverse(scribe.facts);
    CHECK(scribe.record().passage.scale == turned.scale);
    CHECK(scribe.record().passage.title.name == "By heart");
}

TEST_CASE("a run that was broken off does not count as practice of its cell") {
    Scales scribe;
    scribe.make({7, 1}, {'F', 0}, 3);
    scribe.run(60, Mark::voided);
    CHECK_FALSE(scribe.grid().at(3, 5).lastDay.has_value());
    scribe.run(60, Mark::missed);
    CHECK(scribe.grid().at(3, 5).lastDay.has_value());
}

TEST_CASE("a removed scale leaves its cell; one that was created but not played has no day") {
    Scales scribe;
    scribe.make({7, 1}, {'F', 0}, 3);
    CHECK(scribe.grid().at(3, 5).passage == Id{7, 1});
    CHECK_FALSE(scribe.grid().at(3, 5).lastDay.has_value());
    scribe.add(RemovalFact{{7, 1}, true});
    CHECK(scribe.grid().at(3, 5).passage.isNone());
}

TEST_CASE("the keys are gone through by fourths, fifths, semitones or by a lot that its seed decides") {
    CHECK(keysInOrder(KeyOrder::fourths, 9) == std::array{0, 5, 10, 3, 8, 1, 6, 11, 4, 9, 2, 7});
    CHECK(keysInOrder(KeyOrder::fifths, 9) == std::array{0, 7, 2, 9, 4, 11, 6, 1, 8, 3, 10, 5});
    CHECK(keysInOrder(KeyOrder::semitones, 9) == std::array{0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11});
    auto drawn = keysInOrder(KeyOrder::drawn, 5);
    CHECK(drawn == keysInOrder(KeyOrder::drawn, 5));
    CHECK(drawn != keysInOrder(KeyOrder::drawn, 6));
    std::ranges::sort(drawn);
    CHECK(drawn == keysInOrder(KeyOrder::semitones, 0));
}

TEST_CASE("keys with two names are D flat and C sharp, G flat and F sharp, B and C flat in major") {
    const auto names = [](int key, ScaleKind kind) { return spellingsOf(key, kind); };
    using Names = std::vector<Tonic>;
    CHECK(names(1, ScaleKind::major) == Names{{'D', -1}, {'C', 1}});
    CHECK(names(6, ScaleKind::major) == Names{{'G', -1}, {'F', 1}});
    CHECK(names(11, ScaleKind::major) == Names{{'B', 0}, {'C', -1}});
    CHECK(names(0, ScaleKind::major) == Names{{'C', 0}});
    CHECK(names(3, ScaleKind::naturalMinor) == Names{{'E', -1}, {'D', 1}});
    CHECK(names(8, ScaleKind::naturalMinor) == Names{{'G', 1}, {'A', -1}});
    for (std::size_t kind = 0; kind < scaleKindCount; ++kind)
        for (int key = 0; key < keyCount; ++key) {
            const auto found = names(key, static_cast<ScaleKind>(kind));
            CHECK((found.size() == 1 || found.size() == 2));
        }
    SpellingChoice choice;
    CHECK(choice.tonic(1, ScaleKind::major) == Tonic{'D', -1});
    choice.turn(1);
    CHECK(choice.tonic(1, ScaleKind::major) == Tonic{'C', 1});
    CHECK(SpellingChoice(choice.bits()) == choice);
    choice.turn(0);
    CHECK(choice.tonic(0, ScaleKind::major) == Tonic{'C', 0});
}

TEST_CASE("a start comes from the neighbour with the lower best, two notches down") {
    ScaleGrid grid;
    CHECK(startFor(grid, 1, 0).start == Tempo::bpm(60));
    CHECK(startFor(grid, 7, 0).start == Tempo::bpm(34));
    CHECK(startFor(grid, 5, 0).from == StartProposal::From::nothing);
    grid.at(2, 3).best = Tempo::bpm(100);
    grid.at(3, 3).best = Tempo::bpm(80);
    const auto above = startFor(grid, 5, 3);
    CHECK(above.from == StartProposal::From::fewerNotes);
    CHECK(above.notesPerBeat == 3);
    CHECK(above.start == Tempo::bpm(72));
    CHECK(above.target == Tempo::bpm(88));
    grid.at(5, 8).best = Tempo::bpm(69);
    grid.at(5, 10).best = Tempo::bpm(60);
    const auto beside = startFor(grid, 5, 3);
    CHECK(beside.from == StartProposal::From::nextKey);
    CHECK(beside.key == 10);
    CHECK(beside.start == Tempo::bpm(56));
    grid.at(5, 10).best = Tempo::bpm(50);
    CHECK(startFor(grid, 5, 3).start == Tempo::bpm(48));
    grid.at(5, 10).best = Tempo::bpm(44);
    CHECK(startFor(grid, 5, 3).start == Tempo::bpm(44));
    grid.at(5, 8).best = grid.at(5, 10).best = Tempo::bpm(208);
    grid.at(3, 3).best.reset();
    grid.at(2, 3).best.reset();
    CHECK(startFor(grid, 5, 3).target == startFor(grid, 5, 3).start);
}

TEST_CASE("keys a fourth and a fifth above are neighbours, and no others") {
    for (int key = 0; key < keyCount; ++key)
        for (int distance = 1; distance < keyCount; ++distance) {
            ScaleGrid grid;
            grid.at(5, (key + distance) % keyCount).best = Tempo::bpm(80);
            const auto start = startFor(grid, 5, key);
            const bool neighbour = distance == 5 || distance == 7;
            CHECK((start.from == StartProposal::From::nextKey) == neighbour);
            if (neighbour) CHECK(start.key == (key + distance) % keyCount);
        }
}

TEST_CASE("with fewer notes the nearest row counts, and of equal neighbours the same key, then the fourth") {
    ScaleGrid grid;
    grid.at(5, 3).best = Tempo::bpm(40);
    CHECK(startFor(grid, 5, 3).from == StartProposal::From::nothing);
    grid.at(1, 3).best = Tempo::bpm(60);
    CHECK(startFor(grid, 5, 3).notesPerBeat == 1);
    grid.at(4, 3).best = Tempo::bpm(100);
    CHECK(startFor(grid, 5, 3).notesPerBeat == 4);
    grid.at(5, 8).best = grid.at(5, 10).best = Tempo::bpm(100);
    CHECK(startFor(grid, 5, 3).from == StartProposal::From::fewerNotes);
    grid.at(5, 8).best = grid.at(5, 10).best = Tempo::bpm(96);
    CHECK(startFor(grid, 5, 3).key == 8);
}

// The last and first tempi on scale sheets for bands: common practice, no source.
TEST_CASE("a scale without neighbours has the usual tempi of its subdivision") {
    constexpr std::array starts{60, 60, 60, 60, 48, 40, 34};
    constexpr std::array targets{120, 120, 112, 100, 88, 80, 72};
    for (std::size_t row = 0; row < starts.size(); ++row) {
        const auto proposed = startFor({}, static_cast<std::int32_t>(row) + 1, 0);
        CHECK(proposed.start == Tempo::bpm(starts[row]));
        CHECK(proposed.target == Tempo::bpm(targets[row]));
    }
}

TEST_CASE("the next cell is the one played longest ago, else a new one, else the slowest of its row") {
    ScaleGrid grid;
    const auto first = nextCell(grid, byFourths, today);
    CHECK(first.why == CellProposal::Why::first);
    CHECK(first.notesPerBeat == 1);
    CHECK(first.key == 0);

    grid.at(1, 0).lastDay = today;
    grid.at(1, 5).lastDay = Date{2026, 2, 23};
    const auto fresh = nextCell(grid, byFourths, today);
    CHECK(fresh.why == CellProposal::Why::unplayed);
    CHECK(fresh.key == 10);
    CHECK(fresh.days == 0);

    grid.at(1, 5).lastDay = Date{2026, 2, 22};
    const auto stale = nextCell(grid, byFourths, today);
    CHECK(stale.why == CellProposal::Why::longest);
    CHECK(stale.key == 5);
    CHECK(stale.days == 7);

    ScaleGrid all = allPlayed(Date{2026, 2, 27}, 100);
    all.at(4, 6).best = Tempo::bpm(72);
    all.at(7, 2).best = Tempo::bpm(80);
    const auto slow = nextCell(all, byFourths, today);
    CHECK(slow.why == CellProposal::Why::slowest);
    CHECK(slow.notesPerBeat == 4);
    CHECK(slow.key == 6);
    CHECK(slow.days == 0);
    all.at(4, 6).lastDay = today;
    CHECK(nextCell(all, byFourths, today).notesPerBeat == 7);
    ScaleGrid done = allPlayed(today, 100);
    done.at(3, 9).best = Tempo::bpm(90);
    CHECK(nextCell(done, byFourths, today).key == 9);
}

TEST_CASE("the slowness of a cell is measured by the best of its row, whichever key has it") {
    for (int quick = 0; quick < keyCount; ++quick) {
        ScaleGrid grid = allPlayed(Date{2026, 2, 27}, 100);
        grid.at(1, quick).best = Tempo::bpm(120);
        grid.at(1, (quick + 3) % keyCount).best = Tempo::bpm(90);
        grid.at(2, 9).best = Tempo::bpm(75);
        CHECK(nextCell(grid, byFourths, today).key == (quick + 3) % keyCount);
    }
}

TEST_CASE("a row without a best is not behind; a cell without one is behind by its row's full best") {
    ScaleGrid grid = allPlayed(Date{2026, 2, 27}, 100);
    for (int key = 0; key < keyCount; ++key) grid.at(7, key).best.reset();
    CHECK(nextCell(grid, byFourths, today).notesPerBeat == 1);
    grid.at(2, 3).best.reset();
    grid.at(4, 0).best = Tempo::bpm(110);
    grid.at(4, 3).best = Tempo::bpm(10);
    CHECK(nextCell(grid, byFourths, today).notesPerBeat ==
          2); // as far behind as in the fourth row: the first one counts
}

// Weeks begin on Monday: ISO 8601, 2.2.8 (from memory). 28 February 2026 was a Saturday.
TEST_CASE("a week runs from Monday to Sunday") {
    CHECK(mondayOf({2026, 3, 1}) == Date{2026, 2, 23});
    CHECK(mondayOf({2026, 3, 2}) == Date{2026, 3, 2});
    CHECK(mondayOf({1969, 12, 31}) == Date{1969, 12, 29});
}

TEST_CASE("the weeks count a key's runs in all subdivisions, without void ones, but with removed scales") {
    Scales scribe;
    scribe.make({7, 1}, {'F', 0}, 3);
    scribe.turnTo("2026-02-22");
    scribe.run(60, Mark::clean);
    scribe.turnTo("2026-02-23");
    scribe.run(60, Mark::missed);
    scribe.run(60, Mark::voided);
    scribe.tempo(70);
    scribe.make({7, 2}, {'F', 0}, 4);
    scribe.run(60, Mark::clean);
    scribe.add(RemovalFact{{7, 2}, true});
    scribe.make({7, 3}, {'F', 0}, 4, "tuba");
    scribe.run(60, Mark::clean);
    const auto weeks = scaleWeeks(scribe.notebook(), "oboe", today, 3);
    REQUIRE(weeks.size() == 3);
    CHECK(weeks[0].monday == Date{2026, 2, 9});
    CHECK(weeks[0].runs[5] == 0);
    CHECK(weeks[1].runs[5] == 1);
    CHECK(weeks[2].runs[5] == 2);
    CHECK(weeks[2].runs[4] == 0);
}
