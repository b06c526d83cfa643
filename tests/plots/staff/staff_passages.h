// SPDX-License-Identifier: GPL-3.0-or-later
// Music for the tests of the staff: even scales, and passages from a seed.
#pragma once

#include "core/music/staff_music.h"

#include <random>
#include <string_view>

namespace piolo::plots {

/// The pitch so many letters above C0, with the signature's alteration.
WrittenPitch inKey(int letters, int fifths);
/// Up and down two octaves from a tonic, `pulses` even notes to the quarter, for two bars of 4/4; a whole
/// note lands.
StaffMusic evenScale(Clef clef, int fifths, int pulses);
/// Chords, rests, ties, slurs, marks and accidentals in a random meter, from E1 to C8 at the widest. Every
/// length can be written.
StaffMusic randomPassage(std::mt19937& random);

} // namespace piolo::plots
