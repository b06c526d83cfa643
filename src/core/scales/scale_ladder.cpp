// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/scales/scale_ladder.h"

#include "core/music/spelling.h"

#include <array>
#include <cstdlib>

namespace piolo {

namespace {

constexpr int mostAlter = 2;

/// Relative to the major scale: "b3" is its third lowered by a semitone. In the order of ScaleKind.
constexpr std::array<std::string_view, scaleKindCount> degrees{"1 2 3 4 5 6 7",
                                                               "1 2 b3 4 5 b6 b7",
                                                               "1 2 b3 4 5 b6 7",
                                                               "1 2 b3 4 5 6 7",
                                                               "1 2 b3 4 5 6 7",
                                                               "1 2 b3 4 5 6 b7",
                                                               "1 b2 b3 4 5 b6 b7",
                                                               "1 2 3 #4 5 6 7",
                                                               "1 2 3 4 5 6 b7",
                                                               "1 b2 b3 4 b5 b6 b7",
                                                               "1 b2 2 b3 3 4 b5 5 b6 6 b7 7",
                                                               "1 2 3 #4 #5 b7",
                                                               "1 2 b3 4 b5 b6 6 7",
                                                               "1 b2 b3 3 #4 5 6 b7",
                                                               "1 2 3 5 6",
                                                               "1 b3 4 5 b7",
                                                               "1 b3 4 b5 5 b7",
                                                               "1 b2 b3 3 b5 b6 b7",
                                                               "1 2 3 #4 5 6 b7",
                                                               "1 2 3 4 5 6 b7 7",
                                                               "1 2 3 4 5 #5 6 7",
                                                               "1 2 b3 3 4 5 6 b7",
                                                               "1 3 5",
                                                               "1 b3 5",
                                                               "1 3 5 b7",
                                                               "1 b3 b5 bb7",
                                                               "1 b3 b5 b7",
                                                               "1 3 #5"};

constexpr std::array<int, lettersOfOctave> majorSemitones{0, 2, 4, 5, 7, 9, 11};

std::vector<Degree> read(std::string_view text) {
    std::vector<Degree> found;
    int alter = 0;
    for (const char sign : text) {
        if (sign == 'b') --alter;
        if (sign == '#') ++alter;
        if (sign < '1' || sign > '7') continue;
        const int steps = sign - '1';
        found.push_back({steps, majorSemitones[static_cast<std::size_t>(steps)] + alter});
        alter = 0;
    }
    return found;
}

} // namespace

std::vector<Degree> degreesOf(ScaleKind kind, Direction direction) {
    const bool fallsNaturally = kind == ScaleKind::melodicMinor && direction == Direction::down;
    return read(degrees[static_cast<std::size_t>(fallsNaturally ? ScaleKind::naturalMinor : kind)]);
}

WrittenPitch readable(WrittenPitch pitch) noexcept {
    if (std::abs(pitch.alter) <= mostAlter) return pitch;
    return byNextLetter(pitch);
}

ScaleLadder::ScaleLadder(Tonic tonic, int octave, ScaleKind kind)
    : tonic_{tonic.step, tonic.alter, static_cast<std::int8_t>(octave)}, kind_(kind),
      up_(degreesOf(kind, Direction::up)), down_(degreesOf(kind, Direction::down)) {}

WrittenPitch ScaleLadder::at(int index, Direction direction) const {
    if (kind_ == ScaleKind::chromatic) return chromatic(index, direction);
    const auto [octave, place] = octavesOf(index, size());
    const Degree degree = (direction == Direction::up ? up_ : down_)[static_cast<std::size_t>(place)];
    const int letters = lettersAboveC(tonic_) + degree.steps + octave * lettersOfOctave;
    return readable(spelledAt(letters, midiNumber(tonic_) + degree.semitones + octave * semitonesOfOctave));
}

WrittenPitch ScaleLadder::chromatic(int index, Direction direction) const {
    constexpr std::array<int, semitonesOfOctave> withSharps{0, 0, 1, 1, 2, 3, 3, 4, 4, 5, 5, 6};
    constexpr std::array<int, semitonesOfOctave> withFlats{0, 1, 1, 2, 2, 3, 4, 4, 5, 5, 6, 6};
    const int midi = midiNumber(tonic_) + index;
    const auto octaves = octavesOf(index, semitonesOfOctave);
    if (octaves.rest == 0) return spelledAt(lettersAboveC(tonic_) + octaves.octave * lettersOfOctave, midi);
    const auto [octave, place] = octavesOf(midi, semitonesOfOctave);
    const auto& letters = direction == Direction::up ? withSharps : withFlats;
    return spelledAt((octave - 1) * lettersOfOctave + letters[static_cast<std::size_t>(place)], midi);
}

} // namespace piolo
