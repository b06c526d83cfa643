// SPDX-License-Identifier: GPL-3.0-or-later
// What a piece and a passage are: the values that the player edits, in the groups in which they are recorded.
#pragma once

#include "core/base/id.h"
#include "core/music/note.h"
#include "core/passage/click_pattern.h"
#include "core/passage/manner.h"
#include "core/passage/stage.h"
#include "core/rule/rule.h"
#include "core/scales/scale.h"
#include "core/scales/scale_settings.h"
#include "core/time/meter.h"
#include "core/time/timestamp.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace piolo {

/// A passage's name, the piece it belongs to (none: an exercise of its own), and the passage it was made of
/// (none: of no other).
struct Title {
    std::string name;
    Id piece;
    Id origin{};
    bool operator==(const Title&) const = default;
};

/// What is played: everything the click needs but the tempo.
struct Music {
    static constexpr std::int32_t mostBars = 999;

    Meter meter;
    std::int32_t subdivision = 1; ///< pulses to the beat, 1…8
    Fraction pickup;              ///< of a whole note; shorter than a bar; 0: none
    std::int32_t firstBar = 1;    ///< the part's own number of the first whole bar, 0…9999
    std::int32_t bars = 4;        ///< whole bars, 1…999; 0: open-ended, the player ends each run
    bool landing = true;          ///< the next downbeat sounds and belongs to the run
    std::int32_t countInBars = 1; ///< 0…4
    std::int32_t breathBeats = 2; ///< 0…8, between runs
    bool operator==(const Music&) const = default;
};

/// Where the passage begins and what moves it. floor <= start <= target.
struct Tempi {
    Tempo start = Tempo::bpm(60);
    Rule rule;
    bool operator==(const Tempi&) const = default;
};

struct Passage {
    static constexpr std::size_t mostNotes = 1500; ///< so that a line of the journal can hold them

    Id id;
    Title title;
    Music music;
    Tempi tempi;
    ClickPattern click{};         ///< how the click sounds while it is played
    Manner manner{};              ///< how it is played
    std::vector<Note> notes{};    ///< in the order of time; none: not known
    std::optional<Scale> scale{}; ///< the passage is this scale; none: it is music of another kind
    bool operator==(const Passage&) const = default;
};

/// The picture of a passage's music, and the part of it that shows the passage.
struct Picture {
    static constexpr std::int32_t whole = 10'000;

    std::string file;      ///< its name in the folder's pictures/: 32 lower-case hex digits and .png or .jpg
    std::int32_t left = 0; ///< all four in ten-thousandths of the picture; left + width <= whole
    std::int32_t top = 0;  ///< top + height <= whole
    std::int32_t width = whole;  ///< at least 1
    std::int32_t height = whole; ///< at least 1
    bool operator==(const Picture&) const = default;
};
/// True for a name that a picture may have: no path leads out of the folder.
[[nodiscard]] bool isPictureName(std::string_view name) noexcept;
/// Named and cropped inside the bounds.
[[nodiscard]] bool isPicture(const Picture& picture) noexcept;

/// How a whole piece goes.
struct PieceMusic {
    Meter meter;
    std::optional<Tempo> tempo{}; ///< of the meter's beat; none: not known
    bool operator==(const PieceMusic&) const = default;
};

struct Piece {
    static constexpr std::int32_t mostSemitones = 36;
    static constexpr std::int32_t mostBars = 9999;
    static constexpr std::size_t longestNotes = 2000; ///< bytes of UTF-8

    Id id;
    std::string name;
    std::string instrument; ///< as the player writes it: "Clarinet in B♭"
    std::optional<Date> due;
    std::string composer{};
    std::int32_t transposition = 0; ///< semitones from the written to the sounding note, -36…36
    std::int32_t bars = 0;          ///< 0: not known
    PieceMusic music{};
    std::string notes{}; ///< the player's own words, at most longestNotes
    bool operator==(const Piece&) const = default;
};

/// Practice settings: they travel with the folder.
struct PracticeSettings {
    std::int32_t gapMillisAfterMiss = 4000; ///< 0…30000, at least this between a miss and the next first note
    bool playOn = false;                    ///< a miss lets the run go on to its end
    std::int32_t pauseAfterRuns = 20;       ///< runs without a key; 0: never
    std::int32_t secureDays = 3;            ///< different days with a secure
    DayOpening dayOpening = DayOpening::twoRungsBelow;
    std::int32_t reactionMillis = 250; ///< 0…mostReactionMillis, from hearing a slip to pressing the key
    ScaleSettings scales{};
    static constexpr std::int32_t mostReactionMillis = 1000;
    bool operator==(const PracticeSettings&) const = default;
};

} // namespace piolo
