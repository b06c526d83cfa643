// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/time/subdivision.h"

#include <array>

namespace piolo {

namespace {

using enum SubdivisionName;
using Names = std::array<SubdivisionName, mostPulsesToTheBeat>;

// Common practice: the value of the written note, one row for each beat unit, from 1 pulse to 8.
constexpr Names ofHalf{halves, quarters, quarterTriplets, eighths, other, eighthTriplets, other, sixteenths};
constexpr Names ofQuarter{quarters,    eighths,    triplets,   sixteenths,
                          quintuplets, sextuplets, septuplets, thirtySeconds};
constexpr Names ofDottedQuarter{dottedQuarters, duplets,    eighths, quadruplets,
                                other,          sixteenths, other,   other};
constexpr Names ofEighth{eighths, sixteenths, sixteenthTriplets, thirtySeconds, other, other, other, other};
constexpr Names ofDottedHalf{dottedHalves, dottedQuarters, quarters, other, other, eighths, other, other};

const Names& namesOf(BeatUnit beat) noexcept {
    switch (beat) {
    case BeatUnit::half:
        return ofHalf;
    case BeatUnit::quarter:
        return ofQuarter;
    case BeatUnit::dottedQuarter:
        return ofDottedQuarter;
    case BeatUnit::eighth:
        return ofEighth;
    case BeatUnit::dottedHalf:
        return ofDottedHalf;
    }
    return ofQuarter;
}

} // namespace

SubdivisionName nameOf(BeatUnit beat, int pulses) noexcept {
    if (pulses < 1 || pulses > mostPulsesToTheBeat) return other;
    return namesOf(beat)[static_cast<std::size_t>(pulses - 1)];
}

} // namespace piolo
