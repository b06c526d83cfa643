// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/passages/passage_editor.h"

#include "../../practice/book_fixture.h"
#include "core/rule/settle.h"
#include "core/time/fraction_sum.h"
#include "models/passages/passage_draft.h"

#include <QSignalSpy>

using namespace piolo;
using models::PassageEditor;
using test::BookFixture;

namespace {

struct EditorFixture : BookFixture {
    PassageEditor editor{*book};

    [[nodiscard]] std::size_t facts() const { return book->notebook().factCount(); }
    [[nodiscard]] std::string fault(const char* field) const {
        return editor.faults().value(QString::fromLatin1(field)).toString().toStdString();
    }
    [[nodiscard]] const Passage& saved(const QString& id) const {
        const PassageRecord* record = book->notebook().passage(Id::parse(id.toStdString()).value());
        REQUIRE(record != nullptr);
        return record->passage;
    }
};

} // namespace

TEST_CASE_FIXTURE(EditorFixture, "a new passage is good as it stands, and named by its bars") {
    CHECK(editor.valid());
    CHECK(!editor.changed());
    const QString id = editor.save();
    const Passage& passage = saved(id);
    CHECK(passage.title.name == "bars 1–4");
    CHECK(passage.tempi.start == Tempo::bpm(60));
    CHECK(passage.tempi.rule.floor == Tempo::bpm(40));
    CHECK(editor.passage() == id);
    CHECK(!editor.changed());
}

TEST_CASE_FIXTURE(EditorFixture, "each field is checked as it is typed, with one plain line") {
    const std::pair<const char*, const char*> bad[] = {
        {"firstBar", "-1"}, {"bars", "0"},        {"bars", "1000"},     {"meter", "4"},  {"groups", "2+3"},
        {"pickup", "4/4"},  {"pickup", "eighth"}, {"countIn", "5"},     {"breath", "9"}, {"start", "9"},
        {"start", "97"},    {"target", "59"},     {"target", "401"},    {"floor", "61"}, {"drop", "0"},
        {"climb", "x"},     {"cleanRuns", "101"}, {"start", "60.1234"}, {"beat", "3/8"}};
    for (const auto& [field, value] : bad) {
        CAPTURE(std::string(field));
        CAPTURE(std::string(value));
        const QVariant good = editor.draft().value(field);
        editor.set(field, value);
        CHECK(editor.faults().size() == 1);
        CHECK(!editor.valid());
        CHECK(editor.save().isEmpty());
        editor.set(field, good);
        CHECK(editor.valid());
    }
    CHECK(facts() == 0);
}

TEST_CASE_FIXTURE(
    EditorFixture,
    "a start above the target is reported at the target, a floor above the start at the floor") {
    editor.set("start", "100");
    CHECK(fault("target") == "no lower than the start, 100");
    CHECK(fault("start").empty());
    editor.set("start", "60");
    editor.set("floor", "72.5");
    CHECK(fault("floor") == "no higher than the start, 60");
}

TEST_CASE_FIXTURE(EditorFixture, "a faulty field keeps what was typed, and unknown fields are not taken") {
    editor.set("start", "6o");
    CHECK(editor.draft().value("start") == "6o");
    editor.set("no such field", "1");
    CHECK(!editor.draft().contains("no such field"));
}

TEST_CASE_FIXTURE(EditorFixture, "what was typed and not saved is there again when its passage comes back") {
    const Id first = addPassage("first");
    const Id second = addPassage("second");
    editor.set("title", "half a new one");
    editor.load(text(first));
    editor.set("start", "not a tempo");
    editor.load(text(second));
    CHECK(editor.draft().value("title") == "second");
    CHECK(!editor.changed());
    editor.load(text(first));
    CHECK(editor.draft().value("start") == "not a tempo");
    CHECK(editor.changed());
    editor.startNew();
    CHECK(editor.draft().value("title") == "half a new one");
    editor.load(text(first));
    editor.revert();
    CHECK(editor.draft().value("start") == "60");
    CHECK(!editor.changed());
}

TEST_CASE_FIXTURE(EditorFixture, "a run meanwhile moves nothing that was typed") {
    const Id id = addPassage("coda");
    editor.load(text(id));
    editor.set("target", "104");
    run(id, 60);
    CHECK(editor.draft().value("target") == "104");
    CHECK(editor.changed());
}

TEST_CASE_FIXTURE(EditorFixture, "saving records only the groups that changed") {
    const Id id = addPassage("coda");
    editor.load(text(id));
    const auto before = facts();
    CHECK(editor.save() == text(id));
    CHECK(facts() == before);
    editor.set("target", "104");
    editor.save();
    CHECK(facts() == before + 1);
    REQUIRE(book->flush(10'000));
    const auto contents = journal::readFolder(path("folder"), device);
    REQUIRE(contents);
    const auto* last = std::get_if<PassageFact>(&contents->facts.back().body);
    REQUIRE(last != nullptr);
    CHECK(last->tempi.has_value());
    CHECK(!last->title.has_value());
    CHECK(!last->music.has_value());
}

TEST_CASE_FIXTURE(EditorFixture, "everything a passage has comes back as it was typed") {
    editor.set("title", "II, the run");
    editor.set("meter", "7/8");
    editor.set("groups", "3+2+2");
    editor.set("subdivision", 2);
    editor.set("pickup", "1/8");
    editor.set("firstBar", "0");
    editor.set("openEnded", true);
    editor.set("landing", false);
    editor.set("countIn", "2");
    editor.set("breath", "0");
    editor.set("start", "72.5");
    editor.set("floor", "50");
    editor.set("notches", true);
    editor.set("gentle", true);
    editor.set("articulation", static_cast<int>(Articulation::threeAndOne));
    editor.set("rhythm", static_cast<int>(Rhythm::groups));
    editor.set("group", "3");
    editor.set("fingering", "side B flat");
    CAPTURE(editor.faults().keys().join(' ').toStdString());
    const Passage passage = saved(editor.save());
    CHECK(passage.music.meter.text() == "7/8");
    CHECK(passage.music.meter.groupsText() == "3+2+2");
    CHECK(passage.music.meter.beat() == BeatUnit::eighth);
    CHECK(passage.music.pickup == Fraction{1, 8});
    CHECK(passage.music.bars == 0);
    CHECK(!passage.music.landing);
    CHECK(passage.tempi.start.thousandths() == 72'500);
    CHECK(passage.tempi.rule.step == StepKind::notches);
    CHECK(passage.tempi.rule.gentle);
    CHECK(passage.manner == Manner{Articulation::threeAndOne, Rhythm::groups, 3, "side B flat"});
    CHECK(editor.draft().value("fingering") == "side B flat");
    CHECK(editor.draft().value("groups") == "3+2+2");
    CHECK(editor.draft().value("openEnded") == true);
}

TEST_CASE_FIXTURE(EditorFixture, "a meter brings its usual beat; a beat that was chosen stays") {
    editor.set("meter", "6/8");
    CHECK(editor.choices()->beat() == "3/8");
    CHECK(editor.choices()->beats().size() ==
          4); // all except the half note, which does not fill a bar of 6/8
    editor.set("beat", "1/8");
    editor.set("meter", "9/8");
    CHECK(editor.choices()->beat() == "1/8");
    CHECK(editor.text()->usualGroups() == "3+3+3");
    editor.set("beat", "3/8");
    editor.set("meter", "4/4");
    CHECK(editor.choices()->beat() == "1/4");
    CHECK(editor.valid());
}

TEST_CASE_FIXTURE(EditorFixture, "where the rule settles is said in plain words") {
    // (4/(4+2))^(1/5) = 0.9221: Kaernbach 1991 and Levitt 1971 combined, as in docs/rule.md.
    CHECK(editor.outlook()->settleSentence() == "The tempo settles where about 92% of runs are clean.");
    editor.set("drop", "2");
    CHECK(editor.outlook()->settleSentence() == "The tempo settles where about 87% of runs are clean.");
}

TEST_CASE_FIXTURE(EditorFixture, "the time of a run and of the whole way follow what is typed") {
    // Four bars of 4/4 and the landing beat at 60: 17 beats of a second.
    CHECK(
        editor.outlook()->timeSentence().startsWith("17 s per run · at 60, about 7 runs to the next climb"));
    const QString whole = editor.outlook()->timeSentence();
    editor.set("start", "80");
    CHECK(
        editor.outlook()->timeSentence().startsWith("13 s per run · at 80, about 7 runs to the next climb"));
    CHECK(editor.outlook()->timeSentence() != whole);
    editor.set("openEnded", true);
    CHECK(editor.outlook()->timeSentence().startsWith("You end each run yourself"));
}

TEST_CASE_FIXTURE(EditorFixture,
                  "long runs: five in a row up to 20 s, three up to 40 s, beyond that shorter parts") {
    editor.set("landing", false);
    editor.set("bars", "5"); // 20 s at 60
    CHECK(editor.outlook()->proposal().isEmpty());
    editor.set("bars", "6");
    CHECK(editor.outlook()->proposedCleanRuns() == 3);
    CHECK(editor.outlook()->proposal() == "A run of 24 s is long for five in a row: three are enough.");
    editor.takeProposal();
    CHECK(editor.draft().value("cleanRuns") == "3");
    CHECK(editor.outlook()->proposal().isEmpty());
    editor.set("bars", "11");
    CHECK(editor.outlook()->proposedCleanRuns() == 0);
    CHECK(editor.outlook()->proposal() == "A run of 44 s is long: shorter parts come clean sooner.");
}

TEST_CASE_FIXTURE(EditorFixture, "a piece is made, renamed and dated from the form") {
    editor.setPieceChoice("new");
    CHECK(!editor.valid());
    CHECK(editor.piece()->nameFault() == "the piece needs a name");
    editor.piece()->setName("River Suite");
    editor.piece()->setDue("the day after");
    CHECK(!editor.valid());
    editor.piece()->setDue("2026-05-12");
    const QString passage = editor.save();
    auto pieces = book->notebook().pieces();
    REQUIRE(pieces.size() == 1);
    CHECK(saved(passage).title.piece == pieces[0].id);
    CHECK(pieces[0].due == Date{2026, 5, 12});
    CHECK(editor.pieceChoice() == text(pieces[0].id));
    CHECK(editor.piece()->due() == "12 May 2026");

    editor.piece()->setName("River Suite, new edition");
    editor.piece()->setDue("");
    CHECK(editor.changed());
    editor.save();
    pieces = book->notebook().pieces();
    REQUIRE(pieces.size() == 1);
    CHECK(pieces[0].name == "River Suite, new edition");
    CHECK(!pieces[0].due.has_value());
    CHECK(!editor.changed());
}

TEST_CASE_FIXTURE(EditorFixture, "a piece has a meter and a tempo of its own, in the beat of that meter") {
    editor.setPieceChoice("new");
    models::PieceEditor& piece = *editor.piece();
    piece.setName("Quill Jig");
    CHECK(piece.tempoLabel() == "Tempo of the piece, ♩ =");
    piece.setMeter("6/8");
    CHECK(piece.tempoLabel() == "Tempo of the piece, ♩. =");
    piece.setTempo("fast");
    CHECK_FALSE(piece.tempoFault().isEmpty());
    CHECK_FALSE(editor.valid());
    piece.setTempo("72.5");
    const QString passage = editor.save();
    const auto recorded = book->notebook().piece(saved(passage).title.piece);
    REQUIRE(recorded);
    CHECK(recorded->music.meter == Meter::parse("6/8", "", "").value());
    CHECK(recorded->music.tempo == Tempo::parse("72.5").value());
    CHECK(piece.meter() == "6/8");
    CHECK(piece.tempo() == "72.5");
    piece.setMeter("");
    piece.setTempo("");
    editor.save();
    CHECK(book->notebook().piece(recorded->id)->music == PieceMusic{});
    piece.setMeter("6/9");
    CHECK_FALSE(piece.meterFault().isEmpty());
}

TEST_CASE_FIXTURE(EditorFixture,
                  "a passage made of another keeps its origin when it is edited, and says so") {
    const Id whole = addPassage("Quill Jig");
    const Id part = book->newId();
    PassageFact made;
    made.passage = part;
    made.title = Title{"Quill Jig: bar 3", {}, whole};
    made.music = Music{};
    made.tempi = models::freshPassage().tempi;
    book->record(made);
    editor.load(text(part));
    CHECK(editor.text()->originText() == "Made from “Quill Jig”.");
    editor.set("title", "the turn");
    editor.save();
    CHECK(saved(text(part)).title == Title{"the turn", {}, whole});
    editor.load(text(whole));
    CHECK(editor.text()->originText().isEmpty());
}

TEST_CASE_FIXTURE(EditorFixture,
                  "the first half of a passage is a new one with half the bars and their notes, "
                  "for the player to name") {
    Passage whole;
    whole.id = book->newId();
    whole.title = {"Letter C", addPiece("River Suite"), {}};
    whole.music.firstBar = 41;
    whole.music.bars = 5;
    whole.music.meter = Meter::parse("2/2", "1/4", "").value(); // not counted in the usual halves
    whole.tempi.start = Tempo::bpm(84);
    whole.tempi.rule.target = Tempo::bpm(96);
    for (int quarter = 0; quarter < 20; ++quarter) {
        Note note;
        note.onset = *reducedFraction(quarter, 4);
        note.length = {1, 4};
        whole.notes.push_back(note);
    }
    PassageFact made{whole.id, whole.title, whole.music, whole.tempi};
    made.notes = whole.notes;
    book->record(made);
    editor.set("title", "half typed");
    editor.loadFirstHalf(text(whole.id));
    CHECK(editor.passage().isEmpty());
    CHECK(editor.changed());
    CHECK(editor.draft().value("title") == "");
    CHECK(editor.pieceChoice() == text(whole.title.piece));
    CHECK(editor.piece()->name() == "River Suite");
    const Passage half = saved(editor.save());
    CHECK(half.id != whole.id);
    CHECK(half.title == Title{"bars 41–42", whole.title.piece});
    CHECK(half.music.bars == 2);
    CHECK(half.music.meter == whole.music.meter);
    CHECK(half.tempi == whole.tempi);
    CHECK(half.notes.size() == 9); // with the note on which it lands
    CHECK(saved(text(whole.id)) == whole);
}

TEST_CASE_FIXTURE(EditorFixture, "the first half of one bar is that bar") {
    const Id id = addPassage("coda");
    editor.load(text(id));
    editor.set("bars", "1"); // not saved
    editor.loadFirstHalf(text(id));
    CHECK(editor.draft().value("bars") == "1");
    editor.load(text(id));
    CHECK(editor.draft().value("bars") == "1"); // it is there again
    CHECK(editor.changed());
}

TEST_CASE_FIXTURE(EditorFixture, "a second window types, and records nothing") {
    journal::JournalPorts ports;
    ports.clock = clock;
    auto second = practice::PracticeBook::open({path("folder"), device, path("state")}, std::move(ports));
    REQUIRE(second);
    PassageEditor other(*second.value());
    CHECK(other.readOnly());
    CHECK(other.save().isEmpty());
    CHECK(second.value()->notebook().factCount() == 0);
}
