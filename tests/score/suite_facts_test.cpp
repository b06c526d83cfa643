// SPDX-License-Identifier: GPL-3.0-or-later
// Facts from the LilyPond MusicXML test suite (MIT; maintained at github.com/cuthbertLab/musicxmlTestSuite),
// in files of our own: 23a-Tuplets, 31c-MetronomeMarks, 72a-TransposingInstruments. And from the standard:
// w3c/musicxml, schema/musicxml.xsd 4.0.
#include "score_text.h"

#include "core/time/fraction_sum.h"

#include <numeric>

using namespace piolo;
using namespace piolo::test;

namespace {

std::string tuplet(int duration, int actual, int normal) {
    return note(duration, pitch('C', 4),
                "<time-modification><actual-notes>" + std::to_string(actual) +
                    "</actual-notes><normal-notes>" + std::to_string(normal) +
                    "</normal-notes></time-modification>");
}

std::string metronome(const std::string& inside) {
    return "<direction><direction-type><metronome>" + inside + "</metronome></direction-type></direction>";
}

std::string transposed(const std::string& transpose) {
    return "<attributes><divisions>1</divisions><transpose>" + transpose + "</transpose></attributes>";
}

} // namespace

TEST_CASE("tuplets of 84 divisions fall where their ratios put them, to the last (23a)") {
    // 3:2 ×9, 4:2 ×4, 4:1 ×4, 7:3 ×7, 6:2 ×6: quarters, with 84 divisions each.
    const std::string bar =
        "<attributes><divisions>84</divisions><time><beats>14</beats><beat-type>4</beat-type></time>"
        "</attributes>" +
        repeated(9, tuplet(56, 3, 2)) + repeated(4, tuplet(42, 4, 2)) + repeated(4, tuplet(21, 4, 1)) +
        repeated(7, tuplet(36, 7, 3)) + repeated(6, tuplet(28, 6, 2));
    const auto read = readWell(scoreOf(barsOf({bar})));
    const auto& notes = read.parts.at(0).bars.at(0).notes;
    REQUIRE(notes.size() == 30);
    Fraction at;
    for (const auto& it : notes) {
        CHECK(it.onset == at.reduced());
        // A quarter, with `actual` notes in the time of `normal` ones.
        CHECK(it.length == Fraction{it.normal, 4 * it.actual}.reduced());
        at = *sum(at, it.length);
    }
    CHECK(at == Fraction{14, 4}.reduced());
    CHECK(notes[0].actual == 3);
    CHECK(notes[13].actual == 4);
    CHECK(notes[13].normal == 1);
    CHECK(notes[17].actual == 7);
    CHECK(notes[17].normal == 3);
}

TEST_CASE("metronome marks keep their own beat: dotted quarter 100, long 100, dotted quarter 77 (31c)") {
    const auto read = readWell(scoreOf(barsOf(
        {signature(1, "4", "4") +
         metronome("<beat-unit>quarter</beat-unit><beat-unit-dot/><per-minute>100</per-minute>") + note(1) +
         metronome("<beat-unit>long</beat-unit><per-minute>100</per-minute>") + note(1) +
         metronome("<beat-unit>quarter</beat-unit><beat-unit-dot/><per-minute>77</per-minute>") + note(2)})));
    REQUIRE(read.tempi.size() == 3);
    CHECK(read.tempi[0].beat == Fraction{3, 8});
    CHECK(read.tempi[0].perMinute == 100'000);
    CHECK(read.tempi[1].beat == Fraction{4, 1});
    CHECK(read.tempi[1].perMinute == 100'000);
    CHECK(read.tempi[1].onset == Fraction{1, 4});
    CHECK(read.tempi[2].beat == Fraction{3, 8});
    CHECK(read.tempi[2].perMinute == 77'000);
    CHECK(read.tempi[2].onset == Fraction{1, 2});
}

TEST_CASE("a trumpet in B flat sounds a tone lower, a horn in E flat a sixth (72a)") {
    const auto trumpet = readWell(scoreOf(
        barsOf({transposed("<diatonic>-1</diatonic><chromatic>-2</chromatic>") + note(4, pitch('D', 4))})));
    CHECK(trumpet.parts[0].bars[0].transposition == score::Transposition{-2, -1, 0});
    CHECK(trumpet.parts[0].bars[0].notes.at(0).sounding == 60);
    const auto horn = readWell(scoreOf(
        barsOf({transposed("<diatonic>-5</diatonic><chromatic>-9</chromatic>") + note(4, pitch('A', 4))})));
    CHECK(horn.parts[0].bars[0].transposition == score::Transposition{-9, -5, 0});
    CHECK(horn.parts[0].bars[0].notes.at(0).sounding == 60);
}

TEST_CASE("the four saxophones sound where they should, octaves added to semitones") {
    // Written B flat 3 and F 6; the frequencies 207.65, 1244.51 … Hz are these MIDI notes at A4 = 440.
    // Semitones: music21, instrument.py; octave-change as described in musicxml.xsd 4.0.
    struct Horn {
        const char* transpose;
        int low, high;
    };
    for (const Horn& horn :
         {Horn{"<diatonic>-1</diatonic><chromatic>-2</chromatic>", 56, 87},
          Horn{"<diatonic>-5</diatonic><chromatic>-9</chromatic>", 49, 80},
          Horn{"<diatonic>-1</diatonic><chromatic>-2</chromatic><octave-change>-1</octave-change>", 44, 75},
          Horn{"<diatonic>-5</diatonic><chromatic>-9</chromatic><octave-change>-1</octave-change>", 37,
               68}}) {
        const auto read = readWell(scoreOf(
            barsOf({transposed(horn.transpose) + note(1, pitch('B', 3, -1)) + note(1, pitch('F', 6))})));
        CHECK(read.parts[0].bars[0].notes.at(0).sounding == horn.low);
        CHECK(read.parts[0].bars[0].notes.at(1).sounding == horn.high);
    }
}

TEST_CASE("a sounding tempo counts quarters, whatever is printed") {
    // musicxml.xsd 4.0, attribute tempo of sound: quarter notes per minute.
    const auto read =
        readWell(scoreOf(barsOf({signature(1, "6", "8") + "<sound tempo=\"96.5\"/>" + note(3)})));
    REQUIRE(read.tempi.size() == 1);
    CHECK(read.tempi[0].quarters == 96'500);
    CHECK(!read.tempi[0].beat);
}
