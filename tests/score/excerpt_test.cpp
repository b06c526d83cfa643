// SPDX-License-Identifier: GPL-3.0-or-later
#include "score_text.h"

#include "score/pick/excerpt.h"
#include "score/read/score_file.h"

using namespace piolo;
using namespace piolo::test;

namespace {

score::Score ferrywake() {
    return score::readScoreFile(PIOLO_SOURCE_DIR "/samples/ferrywake.musicxml").score;
}

Result<score::Excerpt> picked(const score::Score& from, const char* first, const char* last) {
    const auto begin = score::barNumbered(from.parts.at(0), first);
    const auto end = score::barNumbered(from.parts.at(0), last, begin.value_or(0));
    REQUIRE(begin);
    REQUIRE(end);
    return score::excerpt(from, 0, {*begin, *end});
}

score::Excerpt pickedWell(const score::Score& from, const char* first, const char* last) {
    const auto made = picked(from, first, last);
    REQUIRE(made);
    return *made;
}

std::string metronome(const std::string& inside, const std::string& sound = {}) {
    return "<direction><direction-type><metronome>" + inside + "</metronome></direction-type>" + sound +
           "</direction>";
}

score::Excerpt only(const std::string& bar) { return pickedWell(readWell(scoreOf(barsOf({bar}))), "1", "1"); }

} // namespace

TEST_CASE("a pick-up belongs to the bars that begin with it") {
    const auto made = pickedWell(ferrywake(), "0", "2");
    CHECK(made.music.pickup == Fraction{1, 4});
    CHECK(made.music.firstBar == 1);
    CHECK(made.music.bars == 2);
    CHECK(made.music.meter.text() == "4/4");
    CHECK(made.tempo == Tempo::bpm(108));
    CHECK(made.notes.at(0).onset == Fraction{0, 1});
    CHECK(made.notes.at(2).onset == Fraction{1, 4});
    CHECK(made.notes.at(0).written == WrittenPitch{'D', 0, 5});
    CHECK(made.notes.at(0).sounding == 65);
}

TEST_CASE("bars inside a part have no pick-up, and their printed numbers") {
    const auto made = pickedWell(ferrywake(), "5", "6");
    CHECK(made.music.pickup.isZero());
    CHECK(made.music.firstBar == 5);
    CHECK(made.music.bars == 2);
    CHECK(made.tempo == Tempo::bpm(108));
    CHECK(made.notes.size() == 9);
}

TEST_CASE("the subdivision is the fewest pulses that include every onset") {
    CHECK(pickedWell(ferrywake(), "5", "6").music.subdivision == 2);
    CHECK(pickedWell(ferrywake(), "2", "2").music.subdivision == 4);
    CHECK(pickedWell(ferrywake(), "7", "7").music.subdivision == 5);
    CHECK(pickedWell(ferrywake(), "8", "8").music.subdivision == 2);
    CHECK(pickedWell(ferrywake(), "3", "3").music.subdivision == 3);
}

TEST_CASE("if no subdivision includes every onset, the beats are plain, and it says so") {
    const auto made = pickedWell(ferrywake(), "6", "7");
    CHECK(made.music.subdivision == 1);
    CHECK(!made.onGrid);
    CHECK(pickedWell(ferrywake(), "7", "7").onGrid);
}

TEST_CASE("the second note of a tie is not an onset") {
    const auto eighth = [](const char* ties) { return note(1, pitch('C', 5), ties); };
    const auto bar = signature(2, "2", "4") + note(1, "<rest/>") + eighth("<tie type=\"start\"/>") +
                     eighth("<tie type=\"stop\"/>") + note(1, "<rest/>");
    CHECK(only(bar).music.subdivision == 2);
    CHECK(only(signature(2, "2", "4") + note(2, pitch('C', 5), "<tie type=\"start\"/>") +
               note(1, pitch('C', 5), "<tie type=\"stop\"/>") +
               note(1, pitch('C', 5), "<tie type=\"stop\"/>"))
              .music.subdivision == 1);
}

TEST_CASE("six-eight is counted in dotted quarters unless the mark prints another beat") {
    const std::string bar = signature(2, "6", "8") + "<sound tempo=\"120\"/>" + note(6);
    CHECK(only(bar).music.meter.beat() == BeatUnit::dottedQuarter);
    CHECK(only(bar).tempo == Tempo::bpm(80)); // 120 quarters are 80 dotted quarters
    const auto eighths =
        only(signature(2, "6", "8") + metronome("<beat-unit>eighth</beat-unit><per-minute>150</per-minute>") +
             note(6));
    CHECK(eighths.music.meter.beat() == BeatUnit::eighth);
    CHECK(eighths.tempo == Tempo::bpm(150));
}

TEST_CASE("a printed tempo takes precedence over a sounding one, which replaces words") {
    const std::string quarter = "<beat-unit>quarter</beat-unit><per-minute>";
    CHECK(only(signature(1, "4", "4") + metronome(quarter + "100</per-minute>", "<sound tempo=\"60\"/>") +
               note(4))
              .tempo == Tempo::bpm(100));
    CHECK(only(signature(1, "4", "4") + metronome(quarter + "lively</per-minute>", "<sound tempo=\"60\"/>") +
               note(4))
              .tempo == Tempo::bpm(60));
    CHECK(!only(signature(1, "4", "4") + note(4)).tempo);
    CHECK(!only(signature(1, "4", "4") + "<sound tempo=\"900\"/>" + note(4)).tempo);
}

TEST_CASE("a tempo marked in any part applies to all from there on") {
    std::string xml = scoreOf(barsOf({signature(1, "4", "4") + "<sound tempo=\"72\"/>" + note(4), note(4)}));
    xml.insert(xml.find("</part-list>"), "<score-part id=\"P2\"><part-name>Oboe</part-name></score-part>");
    xml.insert(xml.find("</score-partwise>"),
               "<part id=\"P2\">" + barsOf({signature(1, "4", "4") + note(4), note(4)}) + "</part>");
    const auto read = readWell(xml);
    const auto made = score::excerpt(read, 1, {1, 1});
    REQUIRE(made);
    CHECK(made->tempo == Tempo::bpm(72));
}

TEST_CASE("a sum of beats becomes the groups of the bar") {
    const auto made = only(signature(2, "3+2", "8") + note(5));
    CHECK(made.music.meter.groups() == std::vector<int>{3, 2});
    CHECK(made.music.meter.beat() == BeatUnit::eighth);
}

TEST_CASE("a passage takes voice 1 of staff 1, or the first voice with notes if that one is silent") {
    const std::string second =
        "<backup><duration>4</duration></backup>" + note(4, pitch('G', 4), "<voice>2</voice>");
    CHECK(only(signature(1, "4", "4") + note(4, pitch('C', 5), "<voice>1</voice>") + second)
              .notes.at(0)
              .written.step == 'C');
    CHECK(only(signature(1, "4", "4") + note(4, "<rest/>", "<voice>1</voice>") + second)
              .notes.at(0)
              .written.step == 'G');
    CHECK(only(signature(1, "4", "4") + note(4, "<rest/>")).notes.empty());
}

TEST_CASE("a passage keeps up to 1500 notes, those of no length apart; more are left out altogether") {
    score::Excerpt made;
    Note note;
    note.length = {1, 64};
    made.notes.assign(Passage::mostNotes, note);
    CHECK(score::notesKept(made).size() == Passage::mostNotes);
    Note none = note;
    none.length = {};
    made.notes.push_back(none);
    CHECK(score::notesKept(made).size() == Passage::mostNotes);
    made.notes.push_back(note);
    CHECK(score::notesKept(made).empty());
    made.notes = {note};
    made.notes.front().onset = {1, 1'000'000'000};
    CHECK(score::notesKept(made).empty());
}
