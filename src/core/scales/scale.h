// SPDX-License-Identifier: GPL-3.0-or-later
// A scale to practise: its key and kind, its range, and the order of its notes.
#pragma once

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

} // namespace piolo
