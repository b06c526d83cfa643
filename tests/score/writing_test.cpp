// SPDX-License-Identifier: GPL-3.0-or-later
#include "score/pick/excerpt.h"
#include "score/write/musicxml_writer.h"
#include "score_text.h"

#include "core/music/pitch_text.h"
#include "core/time/fraction_sum.h"

#include <algorithm>
#include <random>

using namespace piolo;
using namespace piolo::test;

namespace {

score::WrittenPart partIn(const char* meter, const char* beat = "", const char* groups = "") {
    score::WrittenPart part;
    part.title = "March of the Spring Band";
    part.instrument = "Flute";
    part.music.meter = *Meter::parse(meter, beat, groups);
    part.music.bars = 1;
    return part;
}

Note noteAt(Fraction onset, Fraction length, WrittenPitch pitch = {'C', 0, 5},
            std::int32_t transposition = 0) {
    return {pitch, midiNumber(pitch) + transposition, onset.reduced(), length.reduced(), false, false, {}};
}

/// `count` notes of one length, one after the other.
std::vector<Note> evenly(std::int32_t count, Fraction each, Fraction from = {}) {
    std::vector<Note> notes;
    for (std::int32_t i = 0; i < count; ++i)
        notes.push_back(
            noteAt(*sum(from, *reducedFraction(std::int64_t{i} * each.numerator, each.denominator)), each));
    return notes;
}

std::string written(const score::WrittenPart& part) {
    const auto text = score::musicXmlOf(part);
    REQUIRE(text);
    return *text;
}

score::Excerpt readBack(const score::WrittenPart& part) {
    const auto score = readWell(written(part));
    REQUIRE(score.parts.size() == 1);
    REQUIRE(!score.parts[0].bars.empty());
    const auto made = score::excerpt(score, 0, {0, score.parts[0].bars.size() - 1});
    REQUIRE(made);
    return *made;
}

std::size_t countOf(const std::string& text, const std::string& wanted) {
    std::size_t count = 0;
    for (auto at = text.find(wanted); at != std::string::npos; at = text.find(wanted, at + 1)) ++count;
    return count;
}

/// All texts of an element, in order.
std::string listOf(const std::string& text, const std::string& element) {
    std::string list;
    const std::string open = '<' + element + '>';
    for (auto at = text.find(open); at != std::string::npos; at = text.find(open, at + 1)) {
        const auto begin = at + open.size();
        list += (list.empty() ? "" : " ") + text.substr(begin, text.find('<', begin) - begin);
    }
    return list;
}

FaultNumber refusalOf(const score::WrittenPart& part) {
    const auto text = score::musicXmlOf(part);
    REQUIRE_FALSE(text);
    return text.fault().number;
}

} // namespace

TEST_CASE("the header of a part is read back: title, composer, instrument, key, meter, transposition") {
    auto part = partIn("3/4");
    part.composer = "A. Fernwood & Sons";
    part.instrument = "Clarinet in B♭";
    part.fifths = -3;
    part.transposition = -2;
    part.notes = {noteAt({0, 1}, {3, 4}, {'E', -1, 4}, -2)};
    const auto score = readWell(written(part));
    CHECK(score.title == part.title);
    CHECK(score.composer == part.composer);
    CHECK(score.parts[0].name == part.instrument);
    CHECK(score.parts[0].bars[0].fifths == -3);
    CHECK(score.parts[0].bars[0].time.text() == "3/4");
    CHECK(score.parts[0].bars[0].transposition == score::Transposition{-2, -1, 0});
}

TEST_CASE("control characters of a title become spaces") {
    auto part = partIn("4/4");
    part.title = "Letter\x01 C\tslow";
    CHECK(readWell(written(part)).title == "Letter  C slow");
}

// The saxophones: semitones from music21, music21/instrument.py; octave-change as described in the MusicXML
// 4.0 schema.
TEST_CASE("whole octaves of a transposition are octave-change, the rest a usual interval") {
    using score::Transposition;
    CHECK(score::transpositionOf(0) == Transposition{0, 0, 0});
    CHECK(score::transpositionOf(-2) == Transposition{-2, -1, 0});
    CHECK(score::transpositionOf(-9) == Transposition{-9, -5, 0});
    CHECK(score::transpositionOf(-14) == Transposition{-2, -1, -1});
    CHECK(score::transpositionOf(-21) == Transposition{-9, -5, -1});
    CHECK(score::transpositionOf(3) == Transposition{3, 2, 0});
    CHECK(score::transpositionOf(12) == Transposition{0, 0, 1});
    for (int semitones = -36; semitones <= 36; ++semitones)
        CHECK(score::transpositionOf(semitones).semitones() == semitones);
}

TEST_CASE("the tempo is printed in the meter's beat and sounds in quarters") {
    auto part = partIn("6/8");
    part.tempo = Tempo::fromThousandths(72'501);
    const std::string text = written(part);
    CHECK(text.find("<sound tempo=\"108.7515\" />") != std::string::npos);
    CHECK(text.find("<beat-unit>quarter</beat-unit>") != std::string::npos);
    CHECK(countOf(text, "<beat-unit-dot />") == 1);
    CHECK(readBack(part).tempo == part.tempo);
    part = partIn("2/2", "1/2");
    part.tempo = Tempo::bpm(60);
    CHECK(written(part).find("<sound tempo=\"120\" />") != std::string::npos);
    CHECK(readBack(part).music.meter == part.music.meter);
}

TEST_CASE("groups are written if they are not the usual ones") {
    CHECK(listOf(written(partIn("7/8")), "beats") == "7");
    auto part = partIn("7/8", "1/8", "3+2+2");
    CHECK(listOf(written(part), "beats") == "3+2+2");
    CHECK(readBack(part).music.meter == part.music.meter);
}

// Common practice, no source: see docs/musicxml.md.
TEST_CASE("equal parts of a beat are tuplets of the next longer plain value") {
    struct Case {
        const char* meter;
        std::int32_t pulses;
        Fraction each;
        const char* actual;
        const char* normal;
        const char* type;
        std::size_t brackets;
    };
    for (const Case& c : {Case{"1/4", 3, {1, 12}, "3", "2", "eighth", 1},
                          {"1/4", 5, {1, 20}, "5", "4", "16th", 1},
                          {"1/4", 6, {1, 24}, "6", "4", "16th", 1},
                          {"1/4", 7, {1, 28}, "7", "4", "16th", 1},
                          {"1/2", 3, {1, 6}, "3", "2", "quarter", 1},
                          {"1/8", 3, {1, 24}, "3", "2", "16th", 1},
                          {"3/8", 5, {3, 40}, "5", "3", "eighth", 1},
                          {"3/8", 7, {3, 56}, "7", "6", "16th", 1},
                          {"1/4", 4, {1, 16}, "", "", "16th", 0},
                          {"3/8", 6, {1, 16}, "", "", "16th", 0}}) {
        CAPTURE(c.pulses);
        CAPTURE(c.meter);
        auto part = partIn(c.meter, c.meter);
        part.notes = evenly(c.pulses, c.each);
        const std::string text = written(part);
        const auto all = [&](const std::string& one) {
            std::string list;
            for (std::int32_t i = 0; i < c.pulses && !one.empty(); ++i) list += (i == 0 ? "" : " ") + one;
            return list;
        };
        CHECK(listOf(text, "actual-notes") == all(c.actual));
        CHECK(listOf(text, "normal-notes") == all(c.normal));
        CHECK(listOf(text, "type") == all(c.type));
        CHECK(countOf(text, "<tuplet type=\"start\"") == c.brackets);
        CHECK(countOf(text, "<tuplet type=\"stop\"") == c.brackets);
        CHECK(readBack(part).notes == part.notes);
    }
}

TEST_CASE("a note across a bar line becomes two tied notes; one across a beat stays one if a value fits") {
    auto part = partIn("2/4");
    part.music.bars = 2;
    part.notes = {noteAt({1, 8}, {1, 4}), noteAt({3, 8}, {1, 4})};
    const std::string text = written(part);
    CHECK(listOf(text, "type") == "eighth quarter eighth eighth eighth quarter");
    CHECK(countOf(text, "<tie type=\"start\" />") == 1);
    CHECK(countOf(text, "<tie type=\"stop\" />") == 1);
}

TEST_CASE("gaps are rests on their beats, and an empty bar is one rest") {
    auto part = partIn("4/4");
    part.music.bars = 2;
    part.notes = {noteAt({1, 4}, {1, 12})};
    const std::string text = written(part);
    CHECK(listOf(text, "type") == "quarter eighth quarter half");
    CHECK(listOf(text, "actual-notes") == "3 3");
    CHECK(countOf(text, "<rest measure=\"yes\" />") == 1);
}

TEST_CASE("the note that lands has a bar of its own, and only such a note") {
    auto part = partIn("3/4");
    part.music.bars = 2;
    part.music.firstBar = 17;
    part.music.pickup = {1, 4};
    part.notes = {noteAt({0, 1}, {1, 4}), noteAt({7, 4}, {1, 4})};
    const auto score = readWell(written(part));
    REQUIRE(score.parts[0].bars.size() == 4);
    CHECK(score.parts[0].bars[0].implicit);
    CHECK(score.parts[0].bars[0].length == Fraction{1, 4});
    CHECK(score.parts[0].bars[3].number == "19");
    CHECK(readBack(part).music.pickup == Fraction{1, 4});
    CHECK(readBack(part).music.firstBar == 17);
    part.notes.pop_back();
    CHECK(readWell(written(part)).parts[0].bars.size() == 3);
}

// Common practice, no source.
TEST_CASE(
    "an accidental lasts to the end of its bar, in its octave, and not for a note tied over the bar line") {
    auto part = partIn("2/4");
    part.fifths = 2;
    part.music.bars = 3;
    const WrittenPitch natural{'F', 0, 5};
    const WrittenPitch sharp{'F', 1, 5};
    part.notes = {noteAt({0, 1}, {1, 8}, sharp),       noteAt({1, 8}, {1, 8}, natural),
                  noteAt({1, 4}, {1, 8}, natural),     noteAt({3, 8}, {1, 4}, natural),
                  noteAt({5, 8}, {1, 8}, sharp),       noteAt({3, 4}, {1, 8}, natural),
                  noteAt({7, 8}, {1, 8}, {'F', 0, 4}), noteAt({1, 1}, {1, 2}, sharp)};
    const std::string text = written(part);
    CHECK(listOf(text, "accidental") == "natural natural natural");
}

TEST_CASE("notes are read back whatever their transposition") {
    auto part = partIn("4/4");
    for (const std::int32_t transposition : {-120, -72, 71, 115}) {
        const WrittenPitch pitch{'C', 0, static_cast<std::int8_t>(transposition < 0 ? 9 : 0)};
        part.transposition = transposition;
        part.notes = {noteAt({0, 1}, {1, 1}, pitch, transposition)};
        CHECK(readBack(part).notes == part.notes);
    }
}

TEST_CASE("accidentals have names up to three sharps or flats") {
    auto part = partIn("7/4");
    part.notes.clear();
    for (std::int8_t alter = -3; alter <= 3; ++alter)
        part.notes.push_back(noteAt({alter + 3, 4}, {1, 4}, {'G', alter, 4}));
    CHECK(listOf(written(part), "accidental") ==
          "triple-flat flat-flat flat natural sharp double-sharp triple-sharp");
    CHECK(readBack(part).notes == part.notes);
}

TEST_CASE("articulations and slurs are read back; a note in two parts has them once") {
    auto part = partIn("2/4");
    part.music.bars = 2;
    part.notes = {noteAt({0, 1}, {1, 4}), noteAt({1, 4}, {1, 4}), noteAt({1, 2}, {1, 2})};
    part.notes[0].articulation = {true, true, true, true, false};
    part.notes[2].articulation = {false, true, false, true, true};
    CHECK(readBack(part).notes == part.notes);
    part.notes = {noteAt({1, 4}, {1, 2})};
    part.notes[0].articulation = {true, false, false, true, false};
    const std::string text = written(part);
    CHECK(countOf(text, "<staccato />") == 1);
    CHECK(countOf(text, "<slur type=\"start\"") == 1);
}

TEST_CASE("beams join eighths and shorter notes of a beat, or of a group, and never the edge of a tuplet") {
    auto part = partIn("2/4");
    part.notes = {noteAt({0, 1}, {3, 16}), noteAt({3, 16}, {1, 16}), noteAt({1, 4}, {1, 8}),
                  noteAt({3, 8}, {1, 8})};
    const std::string text = written(part);
    CHECK(countOf(text, "<beam number=\"1\">begin</beam>") == 2);
    CHECK(countOf(text, "<beam number=\"1\">end</beam>") == 2);
    CHECK(countOf(text, "<beam number=\"2\">backward hook</beam>") == 1);
    part = partIn("7/8");
    part.notes = evenly(7, {1, 8});
    CHECK(countOf(written(part), "<beam number=\"1\">begin</beam>") == 3);
    CHECK(countOf(written(part), "<beam number=\"1\">continue</beam>") == 1);
    part.notes = evenly(3, {1, 24});
    part.notes.push_back(noteAt({1, 8}, {1, 8}));
    CHECK(countOf(written(part), "<beam number=\"1\">begin</beam>") == 1);
    CHECK(countOf(written(part), "<beam number=\"1\">continue</beam>") == 1);
}

TEST_CASE(
    "notes that cannot be written are refused: overlapping, outside, too fine or transposed differently") {
    auto part = partIn("2/4");
    part.notes = {noteAt({0, 1}, {1, 4}), noteAt({1, 8}, {1, 4})};
    CHECK(refusalOf(part) == FaultNumber::notesOverlap);
    part.notes = {noteAt({0, 1}, {1, 4}), noteAt({0, 1}, {1, 8})};
    CHECK(refusalOf(part) == FaultNumber::notesOverlap);
    part.notes = {noteAt({999'999'999, 1}, {1, 4})};
    CHECK(refusalOf(part) == FaultNumber::notesOutside);
    part.notes = {noteAt({0, 1}, {1, 2048})};
    CHECK(refusalOf(part) == FaultNumber::notesTooFine);
    part.notes = {noteAt({0, 1}, {1, 999'999'999})};
    CHECK(refusalOf(part) == FaultNumber::notesTooFine);
    part.notes = {noteAt({0, 1}, {0, 1})};
    CHECK(refusalOf(part) == FaultNumber::notesTooFine);
    part.notes = {noteAt({0, 1}, {1, 4}, {'C', 0, 5}, -2)};
    CHECK(refusalOf(part) == FaultNumber::notesTransposed);
}

namespace {

class RandomPart {
public:
    explicit RandomPart(unsigned seed) : chance_(seed) {}

    score::WrittenPart make() {
        static constexpr const char* meters[] = {"4/4", "3/4", "2/2", "6/8", "7/8", "5/4", "12/8", "3/8"};
        auto part = partIn(meters[below(8)]);
        part.fifths = static_cast<std::int32_t>(below(15)) - 7;
        part.transposition = static_cast<std::int32_t>(below(49)) - 24;
        part.clef = below(2) == 0 ? Clef::treble : Clef::bass;
        part.music.bars = static_cast<std::int32_t>(below(5)) + 1;
        part.music.firstBar = static_cast<std::int32_t>(below(200));
        const Fraction beat = fractionOf(part.music.meter.beat());
        const bool pickUp = part.music.meter.beatsPerBar() > 1 && below(2) == 0;
        if (pickUp) part.music.pickup = beat;
        const auto beats = part.music.bars * part.music.meter.beatsPerBar() + (pickUp ? 1 : 0);
        for (std::int32_t at = 0; at < beats; ++at) addBeat(part, at, beat);
        if (below(2) == 0)
            add(part, *reducedFraction(std::int64_t{beats} * beat.numerator, beat.denominator), beat);
        return part;
    }

private:
    std::uint32_t below(std::uint32_t bound) { return static_cast<std::uint32_t>(chance_() % bound); }

    /// A beat in 1 to 8 equal pulses; some are silent, some are two pulses long.
    void addBeat(score::WrittenPart& part, std::int32_t at, Fraction beat) {
        const auto pulses = static_cast<std::int32_t>(below(8)) + 1;
        for (std::int32_t pulse = 0; pulse < pulses; ++pulse) {
            const bool isTwo = pulse + 1 < pulses && below(4) == 0;
            const auto onset = reducedFraction((std::int64_t{at} * pulses + pulse) * beat.numerator,
                                               std::int64_t{pulses} * beat.denominator);
            const auto length = reducedFraction((isTwo ? 2 : 1) * std::int64_t{beat.numerator},
                                                std::int64_t{pulses} * beat.denominator);
            if (below(6) != 0) add(part, *onset, *length);
            if (isTwo) ++pulse;
        }
    }

    void add(score::WrittenPart& part, Fraction onset, Fraction length) {
        const auto alter = static_cast<std::int8_t>(static_cast<int>(below(5)) - 2);
        WrittenPitch pitch{static_cast<char>('A' + below(7)), alter, static_cast<std::int8_t>(4 + below(3))};
        Note note = noteAt(onset, length, pitch, part.transposition);
        note.articulation = {below(5) == 0, below(5) == 0, below(5) == 0, below(5) == 0, below(5) == 0};
        note.tiedAfter = below(6) == 0;
        if (!part.notes.empty()) note.tiedBefore = part.notes.back().tiedAfter;
        part.notes.push_back(note);
        if (below(8) != 0) return;
        note.written.octave = 3;
        note.sounding = midiNumber(note.written) + part.transposition;
        part.notes.push_back(note);
    }

    std::mt19937 chance_;
};

} // namespace

TEST_CASE(
    "what is written is read back exactly: random parts in eight meters, one to eight pulses to the beat") {
    for (unsigned seed = 1; seed <= 400; ++seed) {
        CAPTURE(seed);
        const auto part = RandomPart(seed).make();
        const auto made = readBack(part);
        REQUIRE(made.notes.size() == part.notes.size());
        for (std::size_t i = 0; i < part.notes.size(); ++i) {
            CAPTURE(i);
            REQUIRE(made.notes[i] == part.notes[i]);
        }
        CHECK(made.music.meter == part.music.meter);
        CHECK(made.music.firstBar == part.music.firstBar);
        CHECK(made.music.pickup == part.music.pickup);
    }
}
