// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/time/meter.h"

#include "core/base/digits.h"

#include <array>
#include <numeric>
#include <optional>

namespace piolo {

namespace {

constexpr int mostBeats = 32;
constexpr std::array beatUnits{BeatUnit::half, BeatUnit::quarter, BeatUnit::dottedQuarter, BeatUnit::eighth,
                               BeatUnit::dottedHalf};

std::optional<BeatUnit> beatUnitOf(Fraction fraction) {
    for (const BeatUnit unit : beatUnits)
        if (fractionOf(unit) == fraction) return unit;
    return std::nullopt;
}

std::string meterText(int numerator, int denominator) {
    return std::to_string(numerator) + '/' + std::to_string(denominator);
}

std::string joined(const std::vector<int>& groups) {
    std::string text;
    for (const int group : groups) text += (text.empty() ? "" : "+") + std::to_string(group);
    return text;
}

bool isMeter(int numerator, int denominator) {
    const bool isNote =
        denominator == 1 || denominator == 2 || denominator == 4 || denominator == 8 || denominator == 16;
    return isNote && numerator >= 1 && numerator <= 32;
}

bool isCompound(Fraction meter) {
    return meter.denominator == 8 && (meter.numerator == 6 || meter.numerator == 9 || meter.numerator == 12);
}

/// Common practice.
std::vector<int> usualGroups(int numerator, int denominator, BeatUnit beat) {
    if (denominator != 8 || beat != BeatUnit::eighth) return {};
    if (numerator == 5) return {3, 2};
    if (numerator == 7) return {2, 2, 3};
    if (numerator == 8) return {3, 3, 2};
    if (isCompound({numerator, denominator}))
        return std::vector<int>(static_cast<std::size_t>(numerator / 3), 3);
    return {};
}

/// The bits of the beats at which groups begin; nothing if the groups do not fill the bar or do not begin on
/// beats.
std::optional<std::uint32_t> startsOf(const std::vector<int>& groups, int numerator, int denominator,
                                      BeatUnit beat) {
    if (groups.empty()) return 1;
    std::uint32_t starts = 0;
    int at = 0;
    for (const int group : groups) {
        const Fraction beatsBefore = ratio({at, denominator}, fractionOf(beat));
        if (group < 1 || group > numerator - at || beatsBefore.denominator != 1) return std::nullopt;
        starts |= std::uint32_t{1} << static_cast<unsigned>(beatsBefore.numerator);
        at += group;
    }
    if (at != numerator) return std::nullopt;
    return starts;
}

std::optional<std::vector<int>> parseGroups(std::string_view text) {
    std::vector<int> groups;
    while (!text.empty()) {
        const std::size_t plus = text.find('+');
        const auto group = digitsOf(text.substr(0, plus), 1, 2);
        if (!group) return std::nullopt;
        groups.push_back(static_cast<int>(*group));
        if (plus == std::string_view::npos) return groups;
        text.remove_prefix(plus + 1);
        if (text.empty()) return std::nullopt;
    }
    return groups;
}

Fault fault(FaultNumber number, std::vector<std::string> arguments) {
    return {number, {}, std::move(arguments)};
}

} // namespace

Fraction fractionOf(BeatUnit unit) noexcept {
    switch (unit) {
    case BeatUnit::half:
        return {1, 2};
    case BeatUnit::quarter:
        return {1, 4};
    case BeatUnit::dottedQuarter:
        return {3, 8};
    case BeatUnit::eighth:
        return {1, 8};
    case BeatUnit::dottedHalf:
        return {3, 4};
    }
    return {1, 4};
}

Result<BeatUnit> parseBeatUnit(std::string_view text) {
    const auto fraction = Fraction::parse(text);
    const auto unit = fraction ? beatUnitOf(*fraction) : std::nullopt;
    if (!unit) return fault(FaultNumber::badBeat, {std::string(text)});
    return *unit;
}

Result<Meter> Meter::make(int numerator, int denominator, BeatUnit beat, std::vector<int> groups) {
    const std::string name = meterText(numerator, denominator);
    if (!isMeter(numerator, denominator)) return fault(FaultNumber::badMeter, {name});
    const Fraction beats = ratio({numerator, denominator}, fractionOf(beat));
    if (beats.denominator != 1) return fault(FaultNumber::beatDoesNotDivide, {fractionOf(beat).text(), name});
    if (beats.numerator > mostBeats) return fault(FaultNumber::badMeter, {name});
    if (groups.empty()) groups = usualGroups(numerator, denominator, beat);
    const auto starts = startsOf(groups, numerator, denominator, beat);
    if (!starts) return fault(FaultNumber::badGroups, {joined(groups), name});
    Meter meter;
    meter.numerator_ = numerator;
    meter.denominator_ = denominator;
    meter.beat_ = beat;
    meter.groups_ = std::move(groups);
    meter.beats_ = beats.numerator;
    meter.groupStarts_ = *starts;
    return meter;
}

Result<Meter> Meter::parse(std::string_view meter, std::string_view beat, std::string_view groups) {
    const auto parts = Fraction::parse(meter);
    if (!parts || !isMeter(parts->numerator, parts->denominator))
        return fault(FaultNumber::badMeter, {std::string(meter)});
    const std::string usual = isCompound(*parts) ? "3/8" : meterText(1, parts->denominator);
    const auto unit = parseBeatUnit(beat.empty() ? usual : beat);
    if (!unit) return unit.fault();
    auto sizes = parseGroups(groups);
    if (!sizes) return fault(FaultNumber::badGroups, {std::string(groups), std::string(meter)});
    return make(parts->numerator, parts->denominator, *unit, std::move(*sizes));
}

std::string Meter::text() const { return meterText(numerator_, denominator_); }

std::string Meter::groupsText() const { return joined(groups_); }

} // namespace piolo
