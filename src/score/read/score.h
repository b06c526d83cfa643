// SPDX-License-Identifier: GPL-3.0-or-later
// A score as read: parts, bars, notes, tempo marks. Plain values; all times are exact.
#pragma once

#include "core/music/note.h"
#include "core/time/fraction.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace piolo::score {

/// The interval from the written to the sounding pitch; chromatic and octaves add up.
struct Transposition {
    std::int32_t chromatic = 0;
    std::int32_t diatonic = 0;
    std::int32_t octaveChange = 0;
    [[nodiscard]] constexpr std::int32_t semitones() const noexcept { return chromatic + 12 * octaveChange; }
    bool operator==(const Transposition&) const = default;
};

/// beats/beatType as written; "3+2/8" has the groups 3 and 2, five beats in all.
struct TimeSignature {
    std::int32_t beats = 4;
    std::int32_t beatType = 4;
    std::vector<int> groups;
    bool counted = true; ///< false: no time signature, or several side by side
    [[nodiscard]] std::string text() const;
    [[nodiscard]] Fraction length() const noexcept { return {beats, beatType}; }
    bool operator==(const TimeSignature&) const = default;
};

/// A note, or a rest (no pitch). Cue notes are left out.
struct ScoreNote {
    Fraction onset; ///< from the beginning of the bar
    Fraction length;
    std::optional<WrittenPitch> written;
    std::int32_t sounding = 0; ///< MIDI note number, if there is a pitch
    std::int32_t voice = 0;    ///< index into Part::voices
    std::int32_t staff = 1;
    std::int32_t actual = 1; ///< this many notes in the time of `normal` ones
    std::int32_t normal = 1;
    bool grace = false; ///< takes no time of its own
    bool chord = false;
    bool tiedBefore = false;
    bool tiedAfter = false;
    NoteArticulation articulation;
};

/// Signs that send the player to another bar than the next one, or that mark where such a jump lands.
enum class SignKind : std::uint8_t { repeatBegins, repeatEnds, endingBegins, endingEnds, jump, codaBegins };

struct Bar {
    std::string number;    ///< as printed
    bool implicit = false; ///< not counted: a pick-up or the rest of a split bar
    TimeSignature time;
    std::int32_t fifths = 0; ///< of the written key: number of sharps, negative for flats
    Transposition transposition;
    Fraction length; ///< of its content
    std::vector<SignKind> signs;
    std::vector<ScoreNote> notes;
};

struct Part {
    std::string id;
    std::string name;
    std::vector<Bar> bars;
    std::vector<std::string> voices; ///< voice names in order of appearance
};

/// A tempo mark: printed, sounding or both.
struct TempoMark {
    std::size_t bar = 0; ///< index into Part::bars
    Fraction onset;
    std::optional<Fraction> beat;          ///< the printed note value
    std::optional<std::int64_t> perMinute; ///< thousandths of such beats per minute, if a number is printed
    std::string text;                      ///< what is printed after the note: "c. 108"
    std::optional<std::int64_t> quarters;  ///< thousandths of quarters per minute (the sounding tempo)
};

struct Score {
    std::string title;
    std::string composer;
    std::vector<Part> parts;
    std::vector<TempoMark> tempi; ///< of all parts, in order of time
};

} // namespace piolo::score
