// SPDX-License-Identifier: GPL-3.0-or-later
// What is played of a passage.
#pragma once

#include "core/base/fields.h"
#include "core/time/meter.h"
#include "core/time/subdivision.h"

#include <cstdint>

namespace piolo {

/// What is played: everything the click needs but the tempo.
struct Music {
    static constexpr std::int32_t mostBars = 999;
    static constexpr std::int32_t lastFirstBar = 9999;
    static constexpr std::int32_t mostCountInBars = 4;
    static constexpr std::int32_t mostBreathBeats = 8;

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

/// Shorter than a bar. Nothing is nothing, whatever it is counted in: "0/8" is no pick-up either.
template <typename Fields>
void describePickup(Fields& in, Music& music) {
    in.unusual("pickup", !music.pickup.isZero(), [&] { in.field("pickup", music.pickup); });
    if (music.pickup.isZero()) music.pickup = {};
    in.check(std::int64_t{music.pickup.numerator} * music.meter.denominator() <
                 std::int64_t{music.pickup.denominator} * music.meter.numerator(),
             "pickup");
}

template <typename Fields>
void describe(Fields& in, Music& music) {
    describe(in, music.meter);
    in.field("subdivision", music.subdivision, Range{1, mostPulsesToTheBeat});
    describePickup(in, music);
    in.field("firstBar", music.firstBar, Range{0, Music::lastFirstBar});
    in.field("bars", music.bars, Range{0, Music::mostBars});
    in.field("landing", music.landing);
    in.field("countInBars", music.countInBars, Range{0, Music::mostCountInBars});
    in.field("breathBeats", music.breathBeats, Range{0, Music::mostBreathBeats});
}

} // namespace piolo
