// SPDX-License-Identifier: GPL-3.0-or-later
// A scale to practise: its key and kind, its range, and the order of its notes.
#pragma once

#include "core/base/fields.h"
#include "core/base/text_form.h"
#include "core/base/value_names.h"
#include "core/music/tonic.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace piolo {

enum class ScaleKind : std::uint8_t {
    major,
    naturalMinor,
    harmonicMinor,
    melodicMinor, ///< raised sixth and seventh on the way up, natural on the way down
    jazzMinor,    ///< the melodic minor's way up in both directions
    dorian,
    phrygian,
    lydian,
    mixolydian,
    locrian,
    chromatic,
    wholeTone,
    wholeHalfDiminished,
    halfWholeDiminished,
    majorPentatonic,
    minorPentatonic,
    blues,
    altered,
    lydianDominant,
    bebopDominant,
    bebopMajor,
    bebopMinor,
    majorArpeggio,
    minorArpeggio,
    dominantArpeggio,
    diminishedArpeggio,
    halfDiminishedArpeggio,
    augmentedArpeggio
};
inline constexpr std::size_t scaleKindCount = 28;

enum class ScaleRange : std::uint8_t {
    oneOctave,
    twoOctaves,
    whole ///< tonic, the instrument's top note in the key, its lowest note, tonic
};
inline constexpr std::size_t scaleRangeCount = 3;

enum class ScalePattern : std::uint8_t {
    inOrder,
    thirds,
    fourths,
    turnsOfThree, ///< 1 2 3, 2 3 4, 3 4 5 …
    turnsOfFour   ///< 1 2 3 4, 2 3 4 5 …
};
inline constexpr std::size_t scalePatternCount = 5;

struct Scale {
    static constexpr std::int32_t mostNotesPerBeat = 7;
    static constexpr std::size_t longestInstrument = 100; ///< bytes of UTF-8

    Tonic tonic; ///< as written for the instrument
    ScaleKind kind = ScaleKind::major;
    ScaleRange range = ScaleRange::oneOctave;
    ScalePattern pattern = ScalePattern::inOrder;
    std::int32_t notesPerBeat = 1; ///< 1…7: quarters to septuplets
    std::string instrument;        ///< one of instruments(), the player's at the time; "": unknown
    bool operator==(const Scale&) const = default;
};

/// The terms used in files and commands: "harmonic minor", "two octaves", "in thirds".
[[nodiscard]] std::string_view nameOf(ScaleKind kind) noexcept;
[[nodiscard]] std::string_view nameOf(ScaleRange range) noexcept;
[[nodiscard]] std::string_view nameOf(ScalePattern pattern) noexcept;
[[nodiscard]] std::optional<ScaleKind> scaleKindNamed(std::string_view name) noexcept;
[[nodiscard]] std::optional<ScaleRange> scaleRangeNamed(std::string_view name) noexcept;
[[nodiscard]] std::optional<ScalePattern> scalePatternNamed(std::string_view name) noexcept;

/// "quarters" … "septuplets" for 1…7 notes per quarter beat; otherwise "".
[[nodiscard]] std::string_view notesName(std::int32_t notesPerBeat) noexcept;
/// "E flat major, two octaves, quintuplets": the English name with which a scale is stored.
[[nodiscard]] std::string textOf(const Scale& scale);

template <>
inline constexpr std::array<std::string_view, scaleKindCount> valueNames<ScaleKind>{
    "major",
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

template <>
inline constexpr std::array<std::string_view, scaleRangeCount> valueNames<ScaleRange>{
    "one octave", "two octaves", "whole range"};

template <>
inline constexpr std::array<std::string_view, scalePatternCount> valueNames<ScalePattern>{
    "in order", "in thirds", "in fourths", "in turns of three", "in turns of four"};

/// Files may also have the names under which two modes are taught.
template <>
struct TextForm<ScaleKind> {
    static std::string text(const ScaleKind& value) { return std::string(nameOf(value)); }
    static std::optional<ScaleKind> parse(std::string_view text) { return scaleKindNamed(text); }
};

template <typename Fields>
void describe(Fields& in, Scale& scale) {
    in.field("tonic", scale.tonic);
    in.field("kind", scale.kind);
    in.field("range", scale.range);
    in.field("pattern", scale.pattern);
    in.field("notes", scale.notesPerBeat, Range{1, Scale::mostNotesPerBeat});
    unlessUsual(in, "instrument", scale.instrument, {}, Longest{Scale::longestInstrument});
}

} // namespace piolo
