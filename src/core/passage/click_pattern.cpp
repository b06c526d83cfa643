// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/passage/click_pattern.h"

#include "core/base/digits.h"

#include <algorithm>
#include <array>
#include <tuple>

namespace piolo {

namespace {

bool dividesInThree(BeatUnit beat) noexcept {
    return beat == BeatUnit::dottedQuarter || beat == BeatUnit::dottedHalf;
}

Fraction noteOf(SwungNotes swung) noexcept {
    return swung == SwungNotes::eighths ? Fraction{1, 8} : Fraction{1, 16};
}

bool isBefore(const BreathPlace& a, const BreathPlace& b) noexcept {
    return std::tie(a.bar, a.beat) < std::tie(b.bar, b.beat);
}

} // namespace

std::string_view nameOf(ClickOn on) noexcept { return valueName(on); }
std::string_view nameOf(Accent accent) noexcept { return valueName(accent); }
std::string_view nameOf(SwungNotes swung) noexcept { return valueName(swung); }
std::optional<ClickOn> clickOnNamed(std::string_view name) noexcept { return valueNamed<ClickOn>(name); }
std::optional<Accent> accentNamed(std::string_view name) noexcept { return valueNamed<Accent>(name); }
std::optional<SwungNotes> swungNotesNamed(std::string_view name) noexcept {
    return valueNamed<SwungNotes>(name);
}

bool isSwing(Fraction swing) noexcept {
    const auto [longer, shorter] = swing;
    return shorter >= 1 && longer >= shorter && longer <= ClickPattern::mostSwingPart &&
           longer <= 3 * std::int64_t{shorter};
}

std::optional<Fraction> parseSwing(std::string_view text) {
    const std::size_t colon = text.find(':');
    if (colon == std::string_view::npos) return std::nullopt;
    const auto longer = digitsOf(text.substr(0, colon), 1, 2);
    const auto shorter = digitsOf(text.substr(colon + 1), 1, 2);
    if (!longer || !shorter) return std::nullopt;
    const Fraction swing{static_cast<std::int32_t>(*longer), static_cast<std::int32_t>(*shorter)};
    return isSwing(swing) ? std::optional(swing) : std::nullopt;
}

std::string swingText(Fraction swing) {
    return std::to_string(swing.numerator) + ':' + std::to_string(swing.denominator);
}

bool isInRange(const BreathPlace& place) noexcept {
    return place.bar >= ClickPattern::firstBar && place.bar <= ClickPattern::lastBar && place.beat >= 1 &&
           place.beat <= ClickPattern::lastBeat && place.beats >= 1 && place.beats <= ClickPattern::mostWait;
}

bool areBreaths(const std::vector<BreathPlace>& list) noexcept {
    const bool ordered = std::adjacent_find(list.begin(), list.end(), [](const auto& a, const auto& b) {
                             return !isBefore(a, b);
                         }) == list.end();
    return ordered && list.size() <= ClickPattern::mostBreaths &&
           std::all_of(list.begin(), list.end(), isInRange);
}

Accent usualAccent(std::int32_t beat, std::uint32_t groupStarts) noexcept {
    if (beat == 0) return Accent::strong;
    return ((groupStarts >> static_cast<std::uint32_t>(beat)) & 1U) != 0 ? Accent::group : Accent::plain;
}

int pulsesToTheBeat(const ClickPattern& pattern, BeatUnit beat, int subdivision) noexcept {
    if (pattern.on != ClickOn::offbeats) return subdivision;
    return dividesInThree(beat) ? 3 : 2;
}

Fraction swingOf(const ClickPattern& pattern, BeatUnit beat, int pulses) noexcept {
    const Fraction length = ratio(fractionOf(beat), {pulses, 1});
    const bool bends = pulses % 2 == 0 && length == noteOf(pattern.swung) && isSwing(pattern.swing);
    return bends ? pattern.swing.reduced() : Fraction{1, 1};
}

} // namespace piolo
