// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/scales/scale.h"

#include "core/base/value_names.h"

namespace piolo {

namespace {

// Each word stands at the place of its value.
constexpr std::array<std::string_view, scaleKindCount> kinds{"major",
                                                             "natural minor",
                                                             "harmonic minor",
                                                             "melodic minor",
                                                             "jazz minor",
                                                             "dorian",
                                                             "phrygian",
                                                             "lydian",
                                                             "mixolydian",
                                                             "locrian",
                                                             "chromatic",
                                                             "whole tone",
                                                             "whole-half diminished",
                                                             "half-whole diminished",
                                                             "major pentatonic",
                                                             "minor pentatonic",
                                                             "blues",
                                                             "altered",
                                                             "lydian dominant",
                                                             "bebop dominant",
                                                             "bebop major",
                                                             "bebop minor",
                                                             "major arpeggio",
                                                             "minor arpeggio",
                                                             "dominant arpeggio",
                                                             "diminished arpeggio",
                                                             "half-diminished arpeggio",
                                                             "augmented arpeggio"};
constexpr std::array<std::string_view, scaleRangeCount> ranges{"one octave", "two octaves", "whole range"};
constexpr std::array<std::string_view, scalePatternCount> patterns{"in order", "in thirds", "in fourths",
                                                                   "in turns of three", "in turns of four"};
constexpr std::array<std::string_view, 7> noteNames{"quarters",    "eighths",    "triplets",  "sixteenths",
                                                    "quintuplets", "sextuplets", "septuplets"};

} // namespace

std::string_view nameOf(ScaleKind kind) noexcept { return at(kinds, kind); }
std::string_view nameOf(ScaleRange range) noexcept { return at(ranges, range); }
std::string_view nameOf(ScalePattern pattern) noexcept { return at(patterns, pattern); }

std::optional<ScaleKind> scaleKindNamed(std::string_view name) noexcept {
    // Two modes are known by the names of scales that are taught before them.
    if (name == "ionian") return ScaleKind::major;
    if (name == "aeolian") return ScaleKind::naturalMinor;
    return named<ScaleKind>(kinds, name);
}

std::optional<ScaleRange> scaleRangeNamed(std::string_view name) noexcept {
    return named<ScaleRange>(ranges, name);
}

std::optional<ScalePattern> scalePatternNamed(std::string_view name) noexcept {
    return named<ScalePattern>(patterns, name);
}

std::string_view notesName(std::int32_t notesPerBeat) noexcept { return at(noteNames, notesPerBeat - 1); }

std::string textOf(const Scale& scale) {
    std::string text = spoken(scale.tonic);
    text.append(" ").append(nameOf(scale.kind));
    if (scale.pattern != ScalePattern::inOrder) text.append(" ").append(nameOf(scale.pattern));
    text.append(", ").append(nameOf(scale.range));
    return text.append(", ").append(notesName(scale.notesPerBeat));
}

} // namespace piolo
