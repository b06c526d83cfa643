// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/music/note_stretch.h"

#include <doctest/doctest.h>

using namespace piolo;

namespace {

/// Bars 17 to 20 in 3/4 with a pick-up of a quarter, a note on every quarter and the landing note.
Music waltz() {
    Music music;
    music.meter = Meter::parse("3/4", "", "").value();
    music.pickup = {1, 4};
    music.firstBar = 17;
    return music;
}
std::vector<Note> quarters() {
    std::vector<Note> notes;
    for (std::int32_t quarter = 0; quarter <= 13; ++quarter)
        notes.push_back(
            {{'C', 0, 5}, 60 + quarter, Fraction{quarter, 4}.reduced(), {1, 4}, false, false, {}});
    return notes;
}
std::vector<int> soundingIn(const BuildUpPart& part) {
    std::vector<int> sounding;
    for (const Note& note : notesOf(part, waltz(), quarters())) sounding.push_back(note.sounding);
    return sounding;
}

} // namespace

TEST_CASE("a part has the notes of its bars and the one it lands on, measured from its beginning") {
    CHECK(soundingIn({18, 1}) == std::vector<int>{64, 65, 66, 67});
    CHECK(soundingIn({20, 1}) == std::vector<int>{70, 71, 72, 73});
    const auto notes = notesOf({18, 1}, waltz(), quarters());
    CHECK(notes.front().onset == Fraction{0, 1});
    CHECK(notes.back().onset == Fraction{3, 4});
}

TEST_CASE("a part that starts at the first bar keeps the pick-up") {
    CHECK(soundingIn({17, 1}) == std::vector<int>{60, 61, 62, 63, 64});
    CHECK(notesOf({17, 4}, waltz(), quarters()) == quarters());
}

TEST_CASE("bars are the same whatever the beat, the count-in and the subdivision") {
    Music other = waltz();
    other.meter = Meter::parse("3/4", "3/4", "").value();
    other.countInBars = 2;
    other.subdivision = 3;
    CHECK(sameBars(waltz(), other));
    other.pickup = {2, 8};
    CHECK(sameBars(waltz(), other));
    other.bars = 5;
    CHECK_FALSE(sameBars(waltz(), other));
    other = waltz();
    other.meter = Meter::parse("6/8", "", "").value();
    CHECK_FALSE(sameBars(waltz(), other));
}
