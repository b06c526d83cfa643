// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/scales/scale_part.h"

#include "core/music/pitch_text.h"
#include "core/scales/scale_passage.h"
#include "core/time/fraction_sum.h"

#include <doctest/doctest.h>

using namespace piolo;

namespace {

const Instrument& alto = *instrumentNamed("alto saxophone");

ScalePart partOf(const Scale& scale, const Instrument& instrument = alto) {
    const auto part = scalePart(scale, instrument.transposition, instrument.range);
    REQUIRE(part);
    return *part;
}

Scale scaleOf(const char* tonic, ScaleRange range, ScalePattern pattern, std::int32_t notes) {
    return {tonicNamed(tonic).value(), ScaleKind::major, range, pattern, notes, "alto saxophone"};
}

std::string textOf(const ScalePart& part) {
    std::string text;
    for (const Note& note : part.notes) text += (text.empty() ? "" : " ") + pitchText(note.written);
    return text;
}

template <typename Law>
void forAllScales(const Law& law) {
    for (const Instrument& instrument : instruments())
        for (int key = 0; key < keyCount; ++key)
            for (std::size_t kind = 0; kind < scaleKindCount; ++kind)
                for (std::size_t range = 0; range < scaleRangeCount; ++range)
                    for (std::size_t pattern = 0; pattern < scalePatternCount; ++pattern) {
                        const auto notes =
                            static_cast<std::int32_t>(1 + (kind + static_cast<std::size_t>(key)) % 7);
                        const Scale scale{spellingsOf(key, static_cast<ScaleKind>(kind)).front(),
                                          static_cast<ScaleKind>(kind),
                                          static_cast<ScaleRange>(range),
                                          static_cast<ScalePattern>(pattern),
                                          notes,
                                          std::string(instrument.name)};
                        law(scale, instrument);
                    }
}

bool isTonic(const Note& note, const Scale& scale) {
    return note.written.step == scale.tonic.step && note.written.alter == scale.tonic.alter;
}

} // namespace

TEST_CASE("a scale goes up to the octave and comes back") {
    CHECK(textOf(partOf(scaleOf("Eb", ScaleRange::oneOctave, ScalePattern::inOrder, 1))) ==
          "Eb4 F4 G4 Ab4 Bb4 C5 D5 Eb5 D5 C5 Bb4 Ab4 G4 F4 Eb4");
    CHECK(
        textOf(partOf(scaleOf("Bb", ScaleRange::oneOctave, ScalePattern::inOrder, 7))).starts_with("Bb3 C4"));
}

TEST_CASE("the whole range is tonic, top note in the key, lowest, tonic") {
    CHECK(textOf(partOf(scaleOf("Eb", ScaleRange::whole, ScalePattern::inOrder, 1))) ==
          "Eb4 F4 G4 Ab4 Bb4 C5 D5 Eb5 F5 G5 Ab5 Bb5 C6 D6 Eb6 F6 Eb6 D6 C6 Bb5 Ab5 G5 F5 Eb5 D5 C5 Bb4 Ab4 "
          "G4 F4 Eb4 D4 C4 Bb3 C4 D4 Eb4");
}

TEST_CASE("in order, the note at a turning point is spelled as it was reached") {
    Scale chromatic = scaleOf("Eb", ScaleRange::whole, ScalePattern::inOrder, 1);
    chromatic.kind = ScaleKind::chromatic;
    const std::string notes = textOf(partOf(chromatic));
    CHECK(notes.find(" E6 F6 E6 Eb6 ") != std::string::npos);
    CHECK(notes.find(" C4 B3 Bb3 B3 C4 ") != std::string::npos);
    chromatic.range = ScaleRange::oneOctave;
    CHECK(textOf(partOf(chromatic)).find(" C#5 D5 Eb5 D5 Db5 ") != std::string::npos);
}

TEST_CASE("thirds, fourths and turns stay inside the octave") {
    CHECK(textOf(partOf(scaleOf("C", ScaleRange::oneOctave, ScalePattern::thirds, 1))) ==
          "C4 E4 D4 F4 E4 G4 F4 A4 G4 B4 A4 C5 C5 A4 B4 G4 A4 F4 G4 E4 F4 D4 E4 C4");
    CHECK(textOf(partOf(scaleOf("C", ScaleRange::oneOctave, ScalePattern::fourths, 1))) ==
          "C4 F4 D4 G4 E4 A4 F4 B4 G4 C5 C5 G4 B4 F4 A4 E4 G4 D4 F4 C4");
    CHECK(
        textOf(partOf(scaleOf("C", ScaleRange::oneOctave, ScalePattern::turnsOfThree, 1))) ==
        "C4 D4 E4 D4 E4 F4 E4 F4 G4 F4 G4 A4 G4 A4 B4 A4 B4 C5 C5 B4 A4 B4 A4 G4 A4 G4 F4 G4 F4 E4 F4 E4 D4 "
        "E4 D4 C4");
    CHECK(textOf(partOf(scaleOf("C", ScaleRange::oneOctave, ScalePattern::turnsOfFour, 1))) ==
          "C4 D4 E4 F4 D4 E4 F4 G4 E4 F4 G4 A4 F4 G4 A4 B4 G4 A4 B4 C5 C5 B4 A4 G4 B4 A4 G4 F4 A4 G4 F4 E4 "
          "G4 F4 "
          "E4 D4 F4 E4 D4 C4");
}

// How players end a scale on a beat is common practice without a source; docs/scales.md describes what is
// done here.
TEST_CASE("a scale with leftover notes ends on a beat: top note twice, or a turn below the tonic") {
    const ScalePart triplets = partOf(scaleOf("C", ScaleRange::oneOctave, ScalePattern::inOrder, 3));
    CHECK(triplets.ending == ScaleEnding{true, false, 0});
    CHECK(textOf(triplets) == "C4 D4 E4 F4 G4 A4 B4 C5 C5 B4 A4 G4 F4 E4 D4 C4");
    const ScalePart sixteenths = partOf(scaleOf("C", ScaleRange::oneOctave, ScalePattern::inOrder, 4));
    CHECK(sixteenths.ending == ScaleEnding{false, false, 2});
    CHECK(textOf(sixteenths).ends_with("D4 C4 B3 C4"));
    const ScalePart sextuplets = partOf(scaleOf("Db", ScaleRange::oneOctave, ScalePattern::inOrder, 6));
    CHECK(textOf(sextuplets).ends_with("Eb4 Db4 C4 Bb3 C4 Db4"));
    const ScalePart over = partOf(scaleOf("Bb", ScaleRange::oneOctave, ScalePattern::inOrder, 4));
    CHECK(over.ending == ScaleEnding{false, false, -2});
    CHECK(textOf(over).ends_with("C4 Bb3 C4 Bb3"));
    const ScalePart pattern = partOf(scaleOf("C", ScaleRange::oneOctave, ScalePattern::turnsOfThree, 3));
    CHECK(pattern.ending == ScaleEnding{false, true, 0});
    CHECK(textOf(pattern).ends_with("E4 D4 C4 C4"));
}

TEST_CASE("if the last tonic is a downbeat, it is the landing note, otherwise it is held to the bar line") {
    const ScalePart lands = partOf(scaleOf("Eb", ScaleRange::twoOctaves, ScalePattern::inOrder, 1));
    CHECK(lands.music.bars == 7);
    CHECK(lands.music.landing);
    CHECK(lands.notes.back().onset == Fraction{7, 1});
    CHECK(lands.notes.back().length == Fraction{1, 4});
    const ScalePart held = partOf(scaleOf("Eb", ScaleRange::twoOctaves, ScalePattern::inOrder, 5));
    CHECK(held.music.bars == 2);
    CHECK_FALSE(held.music.landing);
    CHECK(held.music.subdivision == 5);
    CHECK(held.notes.at(6).onset == Fraction{6, 20}.reduced());
    CHECK(held.notes.back().onset == Fraction{6, 4}.reduced());
    CHECK(held.notes.back().length == Fraction{1, 2});
}

TEST_CASE("every scale begins and ends on its tonic, on a beat, without a gap, and sounds inside MIDI") {
    std::size_t made = 0;
    forAllScales([&](const Scale& scale, const Instrument& instrument) {
        const auto part = scalePart(scale, instrument.transposition, instrument.range);
        REQUIRE(part);
        ++made;
        CHECK(isTonic(part->notes.front(), scale));
        CHECK(isTonic(part->notes.back(), scale));
        const Fraction onset = part->notes.back().onset;
        CHECK(4 % onset.denominator == 0);
        Fraction next;
        bool goesOn = true;
        for (const Note& note : part->notes) {
            goesOn = goesOn && note.onset == next && !below(note.written, instrument.range.lowest) &&
                     note.sounding == midiNumber(note.written) + instrument.transposition.semitones;
            next = sum(note.onset, note.length).value();
        }
        CHECK(goesOn);
        const std::int32_t beats = 4 * part->music.bars + (part->music.landing ? 1 : 0);
        CHECK(next == Fraction{beats, 4}.reduced());
        const bool over = below(instrument.range.highest, part->highest);
        CHECK(part->altissimo == over);
        if (scale.range == ScaleRange::whole) CHECK_FALSE(over);
    });
    CHECK(made == instruments().size() * keyCount * scaleKindCount * scaleRangeCount * scalePatternCount);
}

TEST_CASE("a scale beyond the range says so, and one without a tonic in the range has no part") {
    CHECK(partOf(scaleOf("G", ScaleRange::twoOctaves, ScalePattern::inOrder, 2)).altissimo);
    CHECK_FALSE(partOf(scaleOf("F", ScaleRange::twoOctaves, ScalePattern::inOrder, 2)).altissimo);
    const NoteRange narrow{{'C', 0, 4}, {'D', 0, 4}};
    CHECK_FALSE(scalePart(scaleOf("G", ScaleRange::whole, ScalePattern::inOrder, 2), {}, narrow).has_value());
}

TEST_CASE("a scale beyond the octaves that can be written has no part, even if it could sound") {
    const NoteRange top{{'C', 0, 9}, {'B', 0, 9}};
    const Transposition baritone = instrumentNamed("baritone saxophone")->transposition;
    CHECK_FALSE(scalePart(scaleOf("C", ScaleRange::oneOctave, ScalePattern::inOrder, 1), baritone, top));
    CHECK(scalePart(scaleOf("C", ScaleRange::whole, ScalePattern::inOrder, 1), baritone, top));
    const NoteRange bottom{{'C', -3, 0}, {'C', 0, 2}};
    CHECK_FALSE(scalePart(scaleOf("C", ScaleRange::whole, ScalePattern::inOrder, 1), {}, bottom));
    CHECK(scalePart(scaleOf("C", ScaleRange::oneOctave, ScalePattern::inOrder, 1), {}, bottom));
}

// Transpositions and ranges of the saxophones: music21's instrument.py and a fingering chart, as named in
// docs/scales.md.
TEST_CASE("saxophones sound at their real pitches, and concert keys are named next to the written ones") {
    const auto soundingOf = [](const char* name, WrittenPitch pitch) {
        return midiNumber(pitch) + instrumentNamed(name)->transposition.semitones;
    };
    CHECK(soundingOf("soprano saxophone", {'B', -1, 3}) == 56);
    CHECK(soundingOf("alto saxophone", {'B', -1, 3}) == 49);
    CHECK(soundingOf("tenor saxophone", {'B', -1, 3}) == 44);
    CHECK(soundingOf("baritone saxophone", {'F', 0, 6}) == 68);
    CHECK(concertOf({'E', -1}, ScaleKind::major, alto.transposition) == Tonic{'G', -1});
    CHECK(concertOf({'C', 1}, ScaleKind::major, alto.transposition) == Tonic{'E', 0});
    CHECK(concertOf({'G', -1}, ScaleKind::major, instrumentNamed("tenor saxophone")->transposition) ==
          Tonic{'E', 0});
    CHECK(concertOf({'D', -1}, ScaleKind::major, instrumentNamed("clarinet in B flat")->transposition) ==
          Tonic{'B', 0});
    CHECK(concertOf({'C', 0}, ScaleKind::major, instrumentNamed("horn in F")->transposition) ==
          Tonic{'F', 0});
    CHECK(concertOf({'A', 0}, ScaleKind::major, instrumentNamed("clarinet in A")->transposition) ==
          Tonic{'F', 1});
    CHECK(instrumentNamed("kazoo") == nullptr);
}

TEST_CASE("letters and semitones of a transposition match: a key sounds as its tonic does") {
    for (const Instrument& instrument : instruments())
        for (int key = 0; key < keyCount; ++key)
            for (const Tonic tonic : spellingsOf(key, ScaleKind::major)) {
                const int sounds = (pitchClass(tonic) + instrument.transposition.semitones + 36) % 12;
                CHECK(pitchClass(concertOf(tonic, ScaleKind::major, instrument.transposition)) == sounds);
            }
}

TEST_CASE("a passage of a scale has its notes, its name and the suggested tempi") {
    const Scale scale = scaleOf("Eb", ScaleRange::twoOctaves, ScalePattern::inOrder, 5);
    StartProposal tempi;
    tempi.start = Tempo::bpm(36);
    tempi.target = Tempo::bpm(88);
    const Passage passage = scalePassage({1, 2}, scale, partOf(scale), tempi);
    CHECK(passage.title.name == "E flat major, two octaves, quintuplets");
    CHECK(passage.scale == scale);
    CHECK(passage.notes.size() == 31);
    CHECK(passage.tempi.rule.floor == Tempo::bpm(36));
    CHECK(passage.tempi.rule.target == Tempo::bpm(88));
}

TEST_CASE("the player's own range replaces the instrument's") {
    ScaleSettings settings;
    settings.instrument = "baritone saxophone";
    settings.lowest = WrittenPitch{'A', 0, 3};
    const Player player = playerOf(settings);
    CHECK(player.instrument->name == "baritone saxophone");
    CHECK(player.range == NoteRange{{'A', 0, 3}, {'F', 0, 6}});
    settings.instrument = "kazoo";
    CHECK(playerOf(settings).instrument == &instruments().front());
}
