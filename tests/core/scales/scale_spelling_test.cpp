// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/music/key_signature.h"
#include "core/music/pitch_text.h"
#include "core/scales/scale_ladder.h"

#include <cstdlib>
#include <doctest/doctest.h>
#include <set>

using namespace piolo;

namespace {

std::string notesOf(const char* tonic, ScaleKind kind, Direction direction = Direction::up) {
    const ScaleLadder ladder(tonicNamed(tonic).value(), 4, kind);
    std::string text;
    for (int index = 0; index <= ladder.size(); ++index) {
        const int at = direction == Direction::up ? index : ladder.size() - index;
        text += (text.empty() ? "" : " ") + pitchText(ladder.at(at, direction));
    }
    return text;
}

std::vector<Tonic> allTonics() {
    std::vector<Tonic> tonics;
    for (char step = 'A'; step <= 'G'; ++step)
        for (std::int8_t alter = -1; alter <= 1; ++alter) tonics.push_back({step, alter});
    return tonics;
}

} // namespace

// Spellings as in any harmony textbook (common practice, no source); tests/outside compares all kinds in all
// keys with an independent library.
TEST_CASE("a scale is spelled with each letter once, and with double accidentals where the key needs them") {
    CHECK(notesOf("Eb", ScaleKind::major) == "Eb4 F4 G4 Ab4 Bb4 C5 D5 Eb5");
    CHECK(notesOf("C#", ScaleKind::major) == "C#4 D#4 E#4 F#4 G#4 A#4 B#4 C#5");
    CHECK(notesOf("Cb", ScaleKind::major) == "Cb4 Db4 Eb4 Fb4 Gb4 Ab4 Bb4 Cb5");
    CHECK(notesOf("G#", ScaleKind::harmonicMinor) == "G#4 A#4 B4 C#5 D#5 E5 F##5 G#5");
    CHECK(notesOf("Db", ScaleKind::diminishedArpeggio) == "Db4 Fb4 Abb4 Cbb5 Db5");
    CHECK(notesOf("F", ScaleKind::blues) == "F4 Ab4 Bb4 Cb5 C5 Eb5 F5");
    CHECK(notesOf("D", ScaleKind::dorian) == "D4 E4 F4 G4 A4 B4 C5 D5");
    CHECK(notesOf("G", ScaleKind::lydianDominant) == "G4 A4 B4 C#5 D5 E5 F5 G5");
}

TEST_CASE("classical melodic minor descends as natural minor, jazz minor as it ascended") {
    CHECK(notesOf("A", ScaleKind::melodicMinor) == "A4 B4 C5 D5 E5 F#5 G#5 A5");
    CHECK(notesOf("A", ScaleKind::melodicMinor, Direction::down) == "A5 G5 F5 E5 D5 C5 B4 A4");
    CHECK(notesOf("A", ScaleKind::jazzMinor, Direction::down) == "A5 G#5 F#5 E5 D5 C5 B4 A4");
}

TEST_CASE("the chromatic scale has sharps on the way up and flats on the way down") {
    CHECK(notesOf("Eb", ScaleKind::chromatic) == "Eb4 E4 F4 F#4 G4 G#4 A4 A#4 B4 C5 C#5 D5 Eb5");
    CHECK(notesOf("Eb", ScaleKind::chromatic, Direction::down) ==
          "Eb5 D5 Db5 C5 B4 Bb4 A4 Ab4 G4 Gb4 F4 E4 Eb4");
}

TEST_CASE("no note of any scale needs more than two accidentals, and each sounds as its degree says") {
    for (const Tonic tonic : allTonics())
        for (std::size_t kind = 0; kind < scaleKindCount; ++kind)
            for (const auto direction : {Direction::up, Direction::down}) {
                const ScaleLadder ladder(tonic, 4, static_cast<ScaleKind>(kind));
                const auto degrees = degreesOf(static_cast<ScaleKind>(kind), direction);
                const int size = ladder.size();
                for (int index = -size; index < 2 * size; ++index) {
                    const WrittenPitch pitch = ladder.at(index, direction);
                    const auto place = static_cast<std::size_t>((index + size) % size);
                    const int octave = (index + size) / size - 1;
                    CHECK(std::abs(pitch.alter) <= 2);
                    CHECK(midiNumber(pitch) == 60 + pitchClass(tonic) + (tonic == Tonic{'C', -1} ? -12 : 0) +
                                                   (tonic == Tonic{'B', 1} ? 12 : 0) +
                                                   degrees[place].semitones + 12 * octave);
                }
            }
}

TEST_CASE("a scale rises from note to note, and an octave higher it is spelled the same") {
    for (std::size_t kind = 0; kind < scaleKindCount; ++kind) {
        const ScaleLadder ladder({'B', -1}, 3, static_cast<ScaleKind>(kind));
        for (int index = -10; index < 30; ++index) {
            CHECK(midiNumber(ladder.at(index, Direction::up)) <
                  midiNumber(ladder.at(index + 1, Direction::up)));
            WrittenPitch above = ladder.at(index + ladder.size(), Direction::down);
            --above.octave;
            CHECK(above == ladder.at(index, Direction::down));
        }
    }
}

TEST_CASE("a scale in a key has exactly the accidentals of its signature") {
    for (const ScaleKind kind :
         {ScaleKind::major, ScaleKind::naturalMinor, ScaleKind::dorian, ScaleKind::phrygian,
          ScaleKind::lydian, ScaleKind::mixolydian, ScaleKind::locrian})
        for (const Tonic tonic : allTonics()) {
            const auto fifths = fifthsOf(tonic, kind);
            if (!fifths) continue;
            const ScaleLadder ladder(tonic, 4, kind);
            int sum = 0;
            for (int index = 0; index < ladder.size(); ++index) sum += ladder.at(index, Direction::up).alter;
            CHECK(sum == *fifths);
        }
}

TEST_CASE("a key of more than seven signs has no signature, a scale of no key has none to show") {
    CHECK_FALSE(fifthsOf({'D', -1}, ScaleKind::naturalMinor).has_value());
    CHECK(fifthsOf({'A', -1}, ScaleKind::naturalMinor) == -7);
    CHECK(fifthsOf({'G', 1}, ScaleKind::wholeTone) == 0);
    CHECK(fifthsOf({'B', -1}, ScaleKind::dominantArpeggio) == -3);
}

TEST_CASE("tonics are read as players write them, and written in only one way") {
    for (const Tonic tonic : allTonics()) {
        CHECK(tonicNamed(textOf(tonic)) == tonic);
        CHECK(tonicNamed(spoken(tonic)) == tonic);
    }
    CHECK(tonicNamed("e♭") == Tonic{'E', -1});
    CHECK(tonicNamed("C natural") == Tonic{'C', 0});
    for (const char* wrong : {"", "H", "Es", "Ebb", "E flat ", " E", "E  flat"})
        CHECK_FALSE(tonicNamed(wrong));
}

TEST_CASE("names of kinds, ranges and patterns are read back, and two modes by their other names") {
    std::set<std::string_view> names;
    for (std::size_t place = 0; place < scaleKindCount; ++place) {
        const auto kind = static_cast<ScaleKind>(place);
        CHECK(scaleKindNamed(nameOf(kind)) == kind);
        names.insert(nameOf(kind));
    }
    CHECK(names.size() == scaleKindCount);
    CHECK(scaleKindNamed("ionian") == ScaleKind::major);
    CHECK(scaleKindNamed("aeolian") == ScaleKind::naturalMinor);
    CHECK_FALSE(scaleKindNamed("loud"));
    CHECK(scaleRangeNamed("whole range") == ScaleRange::whole);
    CHECK(scalePatternNamed("in turns of four") == ScalePattern::turnsOfFour);
    CHECK(textOf(Scale{{'E', -1}, ScaleKind::major, ScaleRange::twoOctaves, ScalePattern::inOrder, 5, ""}) ==
          "E flat major, two octaves, quintuplets");
    CHECK(textOf(Scale{{'C', 0}, ScaleKind::blues, ScaleRange::whole, ScalePattern::thirds, 2, ""}) ==
          "C blues in thirds, whole range, eighths");
}
