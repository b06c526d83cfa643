// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/scales/scale_board.h"

#include "../../practice/book_fixture.h"
#include "models/log/log_misses.h"
#include "models/scales/scale_lists.h"
#include "text/passage_title.h"
#include "text/scale_words.h"

#include <doctest/doctest.h>

using namespace piolo;
using namespace piolo::models;
using namespace piolo::test;

namespace {

struct Board {
    Board() { board.choices()->setInstrument("alto saxophone"); }

    [[nodiscard]] QVariantMap cell(int row, int column) {
        return board.rows().at(row).toMap().value("cells").toList().at(column).toMap();
    }
    [[nodiscard]] const PassageRecord& record(const QString& id) {
        return *fixture.book->notebook().passage(Id::parse(id.toStdString()).value());
    }
    void run(const QString& id, int times) {
        for (int time = 0; time < times; ++time) {
            const PassageRecord& known = record(id);
            fixture.book->record(
                RunFact{known.passage.id, known.standing.tempo, Mark::clean, {}, {}, 8'000, {}});
        }
    }

    BookFixture fixture;
    ScaleBoard board{*fixture.book};
};

constexpr int quintuplets = 4;
constexpr int eFlat = 3; // index, by fourths

} // namespace

TEST_CASE("the first suggested cell is C in quarters, and the arrow keys start there") {
    Board at;
    CHECK(at.board.row() == 0);
    CHECK(at.board.column() == 0);
    CHECK(at.board.title() == "C major in quarters");
    CHECK(at.board.whyText().contains("the first key in the slowest notes"));
    at.board.move(-1, 0);
    CHECK(at.board.column() == 11);
    CHECK(at.board.title() == "G major in quarters");
    at.board.move(0, -1);
    CHECK(at.board.row() == 0);
    at.board.move(0, 9);
    CHECK(at.board.row() == 6);
    CHECK(at.board.whyText() == "Not played yet.");
    at.board.chooseProposed();
    CHECK(at.board.row() == 0);
    at.board.choose(7, 0);
    CHECK(at.board.row() == 0);
}

TEST_CASE("a cell becomes a passage once, with its notes, and shows what was played of it") {
    Board at;
    at.board.choose(quintuplets, eFlat);
    CHECK(at.board.startText().contains("48"));
    CHECK(at.board.endText() ==
          "3 flats. To end on a beat, it goes one note below the last tonic and comes back.");
    const QString id = at.board.passageToDrill();
    REQUIRE(id.size() == 32);
    CHECK(at.board.passageToDrill() == id);
    const Passage& passage = at.record(id).passage;
    CHECK(passage.title.name == "E flat major, two octaves, quintuplets");
    CHECK(text::passageTitle(passage) == "E♭ major, two octaves, quintuplets");
    CHECK(passage.notes.size() == 31);
    CHECK(passage.music.subdivision == 5);
    CHECK(at.cell(quintuplets, eFlat).value("best") == "–");
    at.run(id, 11);
    const QVariantMap cell = at.cell(quintuplets, eFlat);
    CHECK(cell.value("best") == "50");
    CHECK(cell.value("below") == "1/5 · 0 d");
    CHECK(cell.value("share").toDouble() == doctest::Approx(50.0 / 88));
    CHECK(cell.value("spoken") == "E♭, quintuplets: best 50, 1 of 5 clean in a row, played today");
    CHECK(at.board.startText() == "Continues at 52.");
    CHECK(at.cell(quintuplets, eFlat + 1).value("best") == "");
}

TEST_CASE("a neighbour lends its tempo") {
    Board at;
    at.board.choose(2, eFlat);
    const QString id = at.board.passageToDrill();
    at.fixture.book->record(TempoFact{at.record(id).passage.id, Tempo::bpm(92), Reason::hand});
    at.run(id, 5);
    at.board.choose(quintuplets, eFlat);
    CHECK(at.board.startText() == "Start at 84, two notches below your best in triplets.");
    at.board.choose(2, eFlat + 1);
    CHECK(at.board.startText() == "Start at 84, two notches below your best in E♭.");
}

TEST_CASE("another name for a key keeps its record and gives it its other notes") {
    Board at;
    at.board.choose(1, 5);
    CHECK(at.board.title() == "D♭ major in eighths");
    CHECK(at.board.otherName() == "C♯");
    const QString id = at.board.passageToDrill();
    at.run(id, 5);
    at.board.turnSpelling();
    CHECK(at.board.title() == "C♯ major in eighths");
    CHECK(at.cell(1, 5).value("best") == "60");
    CHECK(at.board.passageToDrill() == id);
    CHECK(at.record(id).passage.notes.front().written == WrittenPitch{'C', 1, 4});
    CHECK(at.record(id).passage.title.name == "C sharp major, two octaves, eighths");
    CHECK(at.record(id).best == Tempo::bpm(60));
    at.board.choose(1, 0);
    CHECK(at.board.otherName() == "");
}

TEST_CASE("a scale created before the range changed is drilled as the grid shows it now") {
    Board at;
    at.board.choices()->setRange("whole range");
    at.board.choose(1, 0);
    const QString id = at.board.passageToDrill();
    at.run(id, 5);
    at.board.choices()->setHighest("C6");
    CHECK(at.record(id).passage.notes != at.board.part()->notes);
    CHECK(at.board.passageToDrill() == id);
    CHECK(at.record(id).passage.notes == at.board.part()->notes);
    CHECK(at.record(id).passage.music.bars == at.board.part()->music.bars);
    CHECK(at.record(id).best == Tempo::bpm(60));
}

TEST_CASE("a scale above the range says so; one without a tonic cannot be drilled") {
    Board at;
    at.board.choose(0, 11);
    CHECK(at.board.rangeText().startsWith("Altissimo: it goes up to G6, and your highest note is F6."));
    at.board.choices()->setRange("whole range");
    CHECK(at.board.rangeText() == "");
    CHECK(at.board.canDrill());
    at.board.choices()->setLowest("Bb4");
    at.board.choices()->setHighest("F5");
    CHECK(at.board.choices()->highest() == "F5");
    at.board.choose(0, 11);
    CHECK_FALSE(at.board.canDrill());
    CHECK(at.board.passageToDrill() == "");
    CHECK(at.board.rangeText().startsWith("Your range does not contain this tonic"));
}

TEST_CASE("only what the player's range has a tonic for is proposed") {
    Board at;
    at.board.choices()->setLowest("Bb4");
    at.board.choices()->setHighest("F5");
    at.board.choices()->setOrder("fifths");
    at.run(at.board.passageToDrill(), 1);
    at.board.chooseProposed();
    CHECK(at.board.title() == "D major in quarters"); // G is out of range
    CHECK(at.board.canDrill());
}

TEST_CASE("choices are practice settings; another instrument has its own range and its own grid") {
    Board at;
    at.board.choose(0, 0);
    at.run(at.board.passageToDrill(), 5);
    CHECK(at.cell(0, 0).value("best") == "60");
    at.board.choices()->setHighest("F#6");
    CHECK(at.fixture.book->notebook().settings().scales.highest == WrittenPitch{'F', 1, 6});
    at.board.choices()->setInstrument("tuba");
    CHECK(at.board.choices()->highest() == "F4");
    CHECK(at.cell(0, 0).value("best") == "");
    at.board.choices()->setInstrument("kazoo");
    CHECK(at.board.choices()->instrument() == "tuba");
    at.board.choices()->setKind("blues");
    CHECK(at.board.title() == "C blues in quarters");
    at.board.choices()->setKind("loud");
    CHECK(at.board.choices()->kind() == "blues");
    at.board.choices()->setOrder("semitones");
    CHECK(at.board.keys().at(1).toMap().value("name") == "C♯");
    at.board.choices()->drawAgain();
    CHECK(at.board.choices()->order() == "drawn");
    const auto before = at.board.keys();
    at.board.choices()->drawAgain();
    CHECK(at.board.keys() != before);
}

TEST_CASE("some bars of a scale are a passage of their own, not a cell of the grid") {
    Board at;
    at.board.choose(0, 0);
    const Passage whole = at.record(at.board.passageToDrill()).passage;
    const Passage part = passageOfBars(whole, {2, 2});
    CHECK_FALSE(part.scale.has_value());
    CHECK(part.notes.size() == 9);
    CHECK(part.title.origin == whole.id);
}

TEST_CASE("the weeks count runs by key, the current week last") {
    Board at;
    at.board.choose(0, 1);
    at.run(at.board.passageToDrill(), 3);
    const QVariantList weeks = at.board.weeks();
    REQUIRE(weeks.size() == 10);
    CHECK(weeks.last().toMap().value("runs").toList().at(1) == 3);
    CHECK(weeks.first().toMap().value("runs").toList().at(1) == 0);
}

TEST_CASE("every kind, range, pattern and order has a name") {
    for (const QVariantList& list :
         {scaleKindChoices(), rangeChoices(), patternChoices(), keyOrderChoices()}) {
        CHECK(list.size() > 2);
        for (const QVariant& entry : list) CHECK_FALSE(entry.toMap().value("text").toString().isEmpty());
    }
    CHECK(text::noteName({'F', 2, 5}) == "F𝄪5");
    CHECK(text::noteName({'B', -2, 3}) == "B𝄫3");
    CHECK(text::noteName({'F', 3, 5}) == "F♯𝄪5");
    CHECK(text::noteName({'B', -3, 3}) == "B♭𝄫3");
}
