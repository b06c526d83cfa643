// SPDX-License-Identifier: GPL-3.0-or-later
// Where and how the click sounds in a run: a plain value, part of a passage.
#pragma once

#include "core/base/fields.h"
#include "core/base/value_names.h"
#include "core/time/meter.h"
#include "core/time/tempo.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace piolo {

/// What clicks. `beats`: every beat and its subdivisions. The others click nothing else: the first beat of
/// each bar, its even beats (2 and 4), or the off-beats.
enum class ClickOn : std::uint8_t { beats, downbeats, backbeats, offbeats };
/// How one beat of the bar clicks: as a downbeat, as the beginning of a group, as an ordinary beat, or not at
/// all.
enum class Accent : std::uint8_t { strong, group, plain, silent };
/// The written notes that are swung.
enum class SwungNotes : std::uint8_t { eighths, sixteenths };

[[nodiscard]] std::string_view nameOf(ClickOn on) noexcept;
[[nodiscard]] std::string_view nameOf(Accent accent) noexcept;
[[nodiscard]] std::string_view nameOf(SwungNotes notes) noexcept;
[[nodiscard]] std::optional<ClickOn> clickOnNamed(std::string_view name) noexcept;
[[nodiscard]] std::optional<Accent> accentNamed(std::string_view name) noexcept;
[[nodiscard]] std::optional<SwungNotes> swungNotesNamed(std::string_view name) noexcept;

/// A place before which the click waits for the player to breathe.
struct BreathPlace {
    std::int32_t bar = 1;   ///< the part's own bar number, -1…10998
    std::int32_t beat = 1;  ///< counted from 1, at most 32
    std::int32_t beats = 1; ///< how many beats it waits, 1…8
    bool operator==(const BreathPlace&) const = default;
};

/// By default, every beat clicks, accented according to the meter's groups. The count-in is not affected.
struct ClickPattern {
    static constexpr std::size_t mostAccents = 32;
    static constexpr std::size_t mostBreaths = 16;
    static constexpr std::int32_t mostBarsInTurn = 99;
    static constexpr std::int32_t mostSwingPart = 99;
    static constexpr std::int32_t mostSeed = 999'999'999;
    static constexpr std::int32_t mostWait = 8;
    static constexpr std::int32_t firstBar = -1;
    static constexpr std::int32_t lastBar = 10'998;
    static constexpr std::int32_t lastBeat = 32;

    ClickOn on = ClickOn::beats;
    std::vector<Accent> accents;            ///< from beat 1 on; a beat without one is accented according to
                                            ///< the groups
    Fraction swing{1, 1};                   ///< long : short, 1:1 to 3:1, each part at most 99
    SwungNotes swung = SwungNotes::eighths; ///< swung if the beat is divided into pairs of these
    std::int32_t barsOn = 1;                ///< 1…99 bars that click …
    std::int32_t barsOff = 0;            ///< … then 0…99 that do not, in turn, starting at the first full
                                         ///< bar
    std::int32_t silentBars = 0;         ///< percentage of bars that are silent, at random
    std::int32_t leftOutBeats = 0;       ///< percentage of beats that are left out, at random
    std::int32_t seed = 1;               ///< 0…999999999: another seed selects other bars and beats
    std::vector<BreathPlace> breaths;    ///< in the order of the part, no place twice
    Tempo breathBelow = Tempo::bpm(400); ///< from this tempo on, there are no waits
    bool operator==(const ClickPattern&) const = default;
};

/// 1:1 to 3:1, each part 1 to 99.
[[nodiscard]] bool isSwing(Fraction swing) noexcept;
/// Reads "2:1". Nothing if it is not a valid swing.
[[nodiscard]] std::optional<Fraction> parseSwing(std::string_view text);
/// "2:1".
[[nodiscard]] std::string swingText(Fraction swing);
/// True if the values of a breath place are within their limits.
[[nodiscard]] bool isInRange(const BreathPlace& place) noexcept;
/// True if all are within their limits, there are at most 16, and they are in the order of the part with no
/// place twice.
[[nodiscard]] bool areBreaths(const std::vector<BreathPlace>& places) noexcept;

/// The accent of a beat (counted from 0) without one of its own. `groupStarts`: as in Meter. Real-time-safe.
[[nodiscard]] Accent usualAccent(std::int32_t beat, std::uint32_t groupStarts) noexcept;

/// Pulses per beat that the click needs: those of the passage or, on off-beats, 2 (3 if the beat divides into
/// three; its off-beat is the last third: common practice).
[[nodiscard]] int pulsesToTheBeat(const ClickPattern& pattern, BeatUnit beat, int subdivision) noexcept;
/// The swing of a beat of `beat` divided into `pulses`, in lowest terms: 1:1 unless its pulses are pairs of
/// the swung notes.
[[nodiscard]] Fraction swingOf(const ClickPattern& pattern, BeatUnit beat, int pulses) noexcept;

template <>
inline constexpr std::array<std::string_view, 4> valueNames<ClickOn>{"beats", "downbeats", "backbeats",
                                                                     "offbeats"};

template <>
inline constexpr std::array<std::string_view, 4> valueNames<Accent>{"strong", "group", "plain", "silent"};

template <>
inline constexpr std::array<std::string_view, 2> valueNames<SwungNotes>{"eighths", "sixteenths"};

template <typename Fields>
void describeItems(Fields& in, BreathPlace& place) {
    in.item(place.bar, Range{ClickPattern::firstBar, ClickPattern::lastBar});
    in.item(place.beat, Range{1, ClickPattern::lastBeat});
    in.item(place.beats, Range{1, ClickPattern::mostWait});
}

/// A swing is written "2:1".
struct SwingForm {
    static std::string text(const Fraction& swing) { return swingText(swing); }
    static std::optional<Fraction> parse(std::string_view text) { return parseSwing(text); }
};

template <typename Fields>
void describe(Fields& in, ClickPattern& click) {
    const ClickPattern usual;
    in.field("on", click.on);
    unlessUsual(in, "accents", click.accents, {}, Most{ClickPattern::mostAccents});
    in.unusual("swing", click.swing != usual.swing || click.swung != usual.swung, [&] {
        in.field("swing", click.swing, SwingForm{});
        in.field("swung", click.swung);
    });
    in.field("barsOn", click.barsOn, Range{1, ClickPattern::mostBarsInTurn});
    in.field("barsOff", click.barsOff, Range{0, ClickPattern::mostBarsInTurn});
    in.field("silentBars", click.silentBars, Range{0, 100});
    in.field("leftOutBeats", click.leftOutBeats, Range{0, 100});
    in.field("seed", click.seed, Range{0, ClickPattern::mostSeed});
    in.unusual("breaths", !click.breaths.empty() || click.breathBelow != usual.breathBelow, [&] {
        in.field("breaths", click.breaths, Most{ClickPattern::mostBreaths});
        in.check(areBreaths(click.breaths), "breaths");
        in.field("breathBelow", click.breathBelow);
    });
}

} // namespace piolo
