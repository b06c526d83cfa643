// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/music/staff_music.h"

#include "core/music/key_signature.h"

#include <doctest/doctest.h>

using namespace piolo;

namespace {

Passage passageOf(std::vector<WrittenPitch> pitches) {
    Passage passage;
    for (const WrittenPitch pitch : pitches) {
        Note note;
        note.written = pitch;
        passage.notes.push_back(note);
    }
    return passage;
}

/// The letters from C to B in octave 4, altered by the signature.
std::vector<WrittenPitch> scaleIn(int fifths) {
    std::vector<WrittenPitch> pitches;
    for (const char step : {'C', 'D', 'E', 'F', 'G', 'A', 'B'})
        pitches.push_back({step, signatureAlter(step, fifths), 4});
    return pitches;
}

int accidentals(const std::vector<WrittenPitch>& pitches, int fifths) {
    int count = 0;
    for (const WrittenPitch pitch : pitches) count += pitch.alter != signatureAlter(pitch.step, fifths);
    return count;
}

} // namespace

// Common practice: the circle of fifths.
TEST_CASE("a signature has as many accidentals as fifths, and sharps and flats are in opposite order") {
    std::string sharps, flats;
    for (int fifths = 1; fifths <= 7; ++fifths)
        for (const char step : {'A', 'B', 'C', 'D', 'E', 'F', 'G'}) {
            if (signatureAlter(step, fifths) != signatureAlter(step, fifths - 1)) sharps += step;
            if (signatureAlter(step, -fifths) != signatureAlter(step, 1 - fifths)) flats += step;
            CHECK(signatureAlter(step, fifths) >= 0);
            CHECK(signatureAlter(step, -fifths) <= 0);
        }
    CHECK(sharps == "FCGDAEB");
    CHECK(flats == "BEADGCF");
}

TEST_CASE("a passage with all notes of a key gets that key's signature") {
    for (int fifths = -7; fifths <= 7; ++fifths) CHECK(staffOf(passageOf(scaleIn(fifths))).fifths == fifths);
}

TEST_CASE("an inferred signature leaves the fewest accidentals, and is the smallest that does") {
    const std::vector<WrittenPitch> pitches{
        {'F', 1, 4}, {'B', -1, 4}, {'E', -1, 5}, {'C', 0, 5}, {'D', 1, 5}};
    const int fifths = staffOf(passageOf(pitches)).fifths;
    for (int other = -7; other <= 7; ++other) {
        CHECK(accidentals(pitches, fifths) <= accidentals(pitches, other));
        if (accidentals(pitches, other) == accidentals(pitches, fifths))
            CHECK(std::abs(fifths) <= std::abs(other));
    }
    CHECK(staffOf(passageOf({{'F', 1, 4}, {'F', 0, 4}})).fifths == 0);
}

TEST_CASE("a signature is inferred from the notes that are attacked, and there is none without notes") {
    Passage passage = passageOf({{'F', 1, 4}, {'B', -1, 4}, {'B', -1, 4}});
    CHECK(staffOf(passage).fifths == -1);
    passage.notes[1].tiedAfter = passage.notes[2].tiedBefore = true;
    CHECK(staffOf(passage).fifths == 1);
    CHECK(likelyFifths({}) == 0);
}

TEST_CASE("notes mostly below middle C get the bass clef, and the music is copied unchanged") {
    CHECK(staffOf(passageOf({{'C', 3, 3}, {'D', 0, 4}})).clef == Clef::bass);
    CHECK(staffOf(passageOf({{'C', 0, 4}})).clef == Clef::treble);
    Passage passage = passageOf({{'C', 0, 5}});
    passage.music.firstBar = 17;
    const StaffMusic staff = staffOf(passage);
    CHECK(staff.music == passage.music);
    CHECK(staff.notes == passage.notes);
    CHECK_FALSE(staff.endsHere);
}

TEST_CASE(
    "a scale has its instrument's clef, its key's signature and a final bar line, whatever its notes are") {
    Passage passage = passageOf({{'B', -1, 5}, {'C', 1, 6}});
    passage.scale = Scale{};
    passage.scale->tonic = *tonicNamed("E flat");
    passage.scale->instrument = "trombone";
    const StaffMusic staff = staffOf(passage);
    CHECK(staff.clef == Clef::bass);
    CHECK(staff.fifths == -3);
    CHECK(staff.endsHere);
    passage.scale->kind = ScaleKind::chromatic;
    passage.scale->instrument = "oboe";
    CHECK(staffOf(passage).clef == Clef::treble);
    CHECK(staffOf(passage).fifths == 0);
}
