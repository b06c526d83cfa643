// SPDX-License-Identifier: GPL-3.0-or-later
// Meter, the beat in which it is counted, and the groups of its beats.
#pragma once

#include "core/base/fields.h"
#include "core/base/result.h"
#include "core/base/value_names.h"
#include "core/time/fraction.h"

#include <array>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace piolo {

/// The note value counted by BPM.
enum class BeatUnit : std::uint8_t { half, quarter, dottedQuarter, eighth, dottedHalf };

[[nodiscard]] Fraction fractionOf(BeatUnit unit) noexcept;
/// Reads "1/2", "1/4", "3/8", "1/8" or "3/4". Fault badBeat with the text otherwise.
Result<BeatUnit> parseBeatUnit(std::string_view text);

/// A meter such as 7/8, counted in a beat unit, with its bar divided into groups of 1/denominator notes
/// (2+2+3). Always consistent: a whole number of beats, 1 to 32; the groups fill the bar and begin on beats.
class Meter {
public:
    /// 4/4 in quarters.
    Meter() = default;

    /// Without groups, uses the usual ones (5/8 3+2, 7/8 2+2+3, 8/8 3+3+2, and threes for 6/8, 9/8 and 12/8,
    /// if counted in eighths; otherwise none). Faults: badMeter (numerator 1..32, denominator 1 2 4 8 16),
    /// beatDoesNotDivide, badGroups.
    static Result<Meter> make(int numerator, int denominator, BeatUnit beat, std::vector<int> groups = {});
    /// Reads "7/8". An empty `beat` means the meter's usual beat (3/8 for 6/8, 9/8, 12/8; otherwise
    /// 1/denominator, which must be a BeatUnit). `groups` is empty or like "2+2+3".
    static Result<Meter> parse(std::string_view meter, std::string_view beat, std::string_view groups);

    [[nodiscard]] int numerator() const noexcept { return numerator_; }
    [[nodiscard]] int denominator() const noexcept { return denominator_; }
    [[nodiscard]] BeatUnit beat() const noexcept { return beat_; }
    [[nodiscard]] const std::vector<int>& groups() const noexcept { return groups_; }
    [[nodiscard]] int beatsPerBar() const noexcept { return beats_; }
    /// Bit b is set if a group begins at beat b (bit 0, the downbeat, is always set).
    [[nodiscard]] std::uint32_t groupStarts() const noexcept { return groupStarts_; }
    /// "7/8".
    [[nodiscard]] std::string text() const;
    /// "2+2+3", or "" without groups.
    [[nodiscard]] std::string groupsText() const;
    bool operator==(const Meter&) const = default;

private:
    int numerator_ = 4;
    int denominator_ = 4;
    BeatUnit beat_ = BeatUnit::quarter;
    std::vector<int> groups_;
    int beats_ = 4;
    std::uint32_t groupStarts_ = 1;
};

/// A beat unit is written as its fraction: "3/8".
template <>
inline constexpr std::array<std::string_view, 5> valueNames<BeatUnit>{"1/2", "1/4", "3/8", "1/8", "3/4"};

/// Three keys of the object that the meter is part of.
template <typename Fields>
void describe(Fields& in, Meter& meter) {
    std::string bar = meter.text();
    std::string beat = fractionOf(meter.beat()).text();
    std::string groups = meter.groupsText();
    in.field("meter", bar);
    in.field("beat", beat);
    unlessUsual(in, "groups", groups, {});
    // An empty beat would stand for the usual one; in a file it is spelt out.
    const auto read = Meter::parse(bar, beat.empty() ? "0/1" : beat, groups);
    in.check(read.ok() || read.fault().number != FaultNumber::badMeter, "meter");
    in.check(read.ok() || read.fault().number != FaultNumber::badGroups, "groups");
    in.check(read.ok() || read.fault().number == FaultNumber::badMeter ||
                 read.fault().number == FaultNumber::badGroups,
             "beat");
    if (read) meter = *read;
}

} // namespace piolo
