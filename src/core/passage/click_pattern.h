// SPDX-License-Identifier: GPL-3.0-or-later
// Where and how the click sounds inside a run: a plain value that belongs to a passage.
#pragma once

#include "core/time/meter.h"
#include "core/time/tempo.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace piolo {

/// What clicks. `beats`: every beat and what divides it. All others are heard alone: the first beat of each
/// bar, its even beats (2 and 4), or what lies between the beats.
enum class ClickOn : std::uint8_t { beats, downbeats, backbeats, offbeats };
/// How one beat of the bar clicks: as a downbeat, as the beginning of a group, as any beat, or not at all.
enum class Accent : std::uint8_t { strong, group, plain, silent };
/// The written notes that swing bends.
enum class SwungNotes : std::uint8_t { eighths, sixteenths };

[[nodiscard]] std::string_view nameOf(ClickOn on) noexcept;
[[nodiscard]] std::string_view nameOf(Accent accent) noexcept;
[[nodiscard]] std::string_view nameOf(SwungNotes notes) noexcept;
[[nodiscard]] std::optional<ClickOn> clickOnNamed(std::string_view name) noexcept;
[[nodiscard]] std::optional<Accent> accentNamed(std::string_view name) noexcept;
[[nodiscard]] std::optional<SwungNotes> swungNotesNamed(std::string_view name) noexcept;

/// A place before which the click waits, so that the player can breathe.
struct BreathPlace {
    std::int32_t bar = 1;   ///< the part's own bar number, -1…10998
    std::int32_t beat = 1;  ///< from 1, at most 32
    std::int32_t beats = 1; ///< how long it waits, 1…8
    bool operator==(const BreathPlace&) const = default;
};

/// By default every beat clicks, accented as the meter's groups say. The count-in is not touched by it.
struct ClickPattern {
    static constexpr std::size_t mostAccents = 32;
    static constexpr std::size_t mostBreaths = 16;
    static constexpr std::int32_t mostBarsInTurn = 99;
    static constexpr std::int32_t mostSwingPart = 99;
    static constexpr std::int32_t mostSeed = 999'999'999;
    static constexpr std::int32_t mostWait = 8;
    static constexpr std::int32_t lastBar = 10'998;

    ClickOn on = ClickOn::beats;
    std::vector<Accent> accents;            ///< from beat 1; a beat without one has that of its group
    Fraction swing{1, 1};                   ///< long : short, 1:1 to 3:1, each part at most 99
    SwungNotes swung = SwungNotes::eighths; ///< bent when the beat is divided into pairs of these
    std::int32_t barsOn = 1;                ///< 1…99 bars click …
    std::int32_t barsOff = 0;               ///< … and then 0…99 do not, in turn, from the first whole bar
    std::int32_t silentBars = 0;            ///< so many bars of a hundred are silent, at random
    std::int32_t leftOutBeats = 0;          ///< so many beats of a hundred are left out, at random
    std::int32_t seed = 1;                  ///< 0…999999999: another seed, other bars and beats
    std::vector<BreathPlace> breaths;       ///< in the order of the part, no place twice
    Tempo breathBelow = Tempo::bpm(400);    ///< at this tempo and above, no place waits
    bool operator==(const ClickPattern&) const = default;
};

/// 1:1 to 3:1, each part 1 to 99.
[[nodiscard]] bool isSwing(Fraction swing) noexcept;
/// Reads "2:1". Nothing when it is no swing.
[[nodiscard]] std::optional<Fraction> parseSwing(std::string_view text);
/// "2:1".
[[nodiscard]] std::string swingText(Fraction swing);
/// A breath place inside its limits.
[[nodiscard]] bool isInRange(const BreathPlace& place) noexcept;
/// Inside their limits, at most 16, in the order of the part, no place twice.
[[nodiscard]] bool areBreaths(const std::vector<BreathPlace>& places) noexcept;

/// The accent of a beat (from 0) without one of its own. `groupStarts`: as in Meter. Real-time-safe.
[[nodiscard]] Accent usualAccent(std::int32_t beat, std::uint32_t groupStarts) noexcept;

/// Pulses to the beat that the click keeps: those of the passage, or, on off-beats, 2 (3 in a beat that
/// divides in three, whose off-beat is the last third: common practice).
[[nodiscard]] int pulsesToTheBeat(const ClickPattern& pattern, BeatUnit beat, int subdivision) noexcept;
/// The swing that bends a beat of `beat` in `pulses`, in lowest terms: 1:1 unless its pulses are pairs of the
/// notes that swing.
[[nodiscard]] Fraction swingOf(const ClickPattern& pattern, BeatUnit beat, int pulses) noexcept;

} // namespace piolo
