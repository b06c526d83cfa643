// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/music/key_signature.h"

#include <algorithm>
#include <array>
#include <cstddef>
#include <cstdlib>
#include <string_view>

namespace piolo {

namespace {

/// The number of fifths from the tonic to its parent major key, in the order of ScaleKind: the dorian scale
/// on D has the signature of C, two fifths below. `none`: no key.
constexpr int none = 100;
constexpr std::array<int, scaleKindCount> fromMajor{
    0,    -3,                       // major, natural minor
    -3,   -3,   -3,                 // harmonic, melodic, jazz minor
    -2,   -4,   1,    -1,   -5,     // modes
    none, none, none, none,         // chromatic, whole tone, diminished
    0,    -3,   -3,                 // pentatonics, blues
    none, -1,   -1,   0,    -2,     // altered, lydian dominant, bebop
    0,    -3,   -1,   none, -5, 0}; // arpeggios

/// Fifths from C for each letter, A to G.
constexpr std::array<int, 7> fromC{3, 5, 0, 2, 4, -1, 1};
constexpr int fifthsOfAlter = 7;

constexpr std::string_view orderOfSharps = "FCGDAEB";

std::ptrdiff_t accidentalsWith(int fifths, const std::vector<Note>& notes) noexcept {
    return std::ranges::count_if(notes, [&](const Note& note) {
        return !note.tiedBefore && note.written.alter != signatureAlter(note.written.step, fifths);
    });
}

} // namespace

std::optional<int> fifthsOf(Tonic tonic, ScaleKind kind) noexcept {
    const int parent = fromMajor[static_cast<std::size_t>(kind)];
    if (parent == none) return 0;
    const int fifths =
        fromC[static_cast<std::size_t>(tonic.step - 'A')] + fifthsOfAlter * tonic.alter + parent;
    if (std::abs(fifths) > mostFifths) return std::nullopt;
    return fifths;
}

std::int8_t signatureAlter(char step, int fifths) noexcept {
    const int place = static_cast<int>(orderOfSharps.find(step));
    if (place < fifths) return 1;
    return place >= mostFifths + fifths ? std::int8_t{-1} : std::int8_t{0};
}

int likelyFifths(const std::vector<Note>& notes) noexcept {
    int best = 0;
    std::ptrdiff_t fewest = accidentalsWith(best, notes);
    for (int size = 1; size <= mostFifths; ++size)
        for (const int fifths : {size, -size})
            if (const auto count = accidentalsWith(fifths, notes); count < fewest) {
                best = fifths;
                fewest = count;
            }
    return best;
}

} // namespace piolo
