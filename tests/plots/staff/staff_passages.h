// SPDX-License-Identifier: GPL-3.0-or-later
// Music for the tests of the staff: even scales, and random passages from a seed.
#pragma once

#include "core/music/staff_music.h"

#include <random>
#include <string_view>

namespace piolo::plots {

/// The pitch `letters` letters above C0, altered by the key signature.
WrittenPitch inKey(int letters, int fifths);
/// Two octaves up and down from a tonic, `pulses` even notes per quarter, for two bars of 4/4; lands on a
/// whole note.
StaffMusic evenScale(Clef clef, int fifths, int pulses);
/// Chords, rests, ties, slurs, articulations and accidentals in a random meter, between E1 and C8. Every
/// length can be notated.
StaffMusic randomPassage(std::mt19937& random);

} // namespace piolo::plots
