// SPDX-License-Identifier: GPL-3.0-or-later
#include "exact.h"

#include "engine/click/click_track.h"

#include <doctest/doctest.h>

#include <array>
#include <vector>

using namespace piolo;
using namespace piolo::engine;

namespace {

const std::array ratios{Fraction{1, 1}, Fraction{3, 2}, Fraction{2, 1},   Fraction{3, 1},
                        Fraction{5, 3}, Fraction{7, 5}, Fraction{29, 21}, Fraction{99, 97}};

ClickTrack swung(const Meter& meter, std::int32_t subdivision, Fraction swing, SwungNotes notes,
                 Tempo tempo = Tempo::clampedThousandths(137'125)) {
    ClickTrack track;
    track.meter = meter;
    track.subdivision = subdivision;
    track.click.swing = swing;
    track.click.swung = notes;
    track.stretches = {{tempo, 40, false}};
    return track;
}

/// Pulse `part` of a beat in `pulses` comes after whole pairs plus, if its number is odd, the long part of a
/// pair.
std::uint64_t place(std::uint64_t beat, std::int32_t part, std::int32_t pulses, Fraction swing, Tempo tempo,
                    SampleRate rate) {
    const auto sum = static_cast<std::uint64_t>(swing.numerator + swing.denominator);
    const auto pairs = static_cast<std::uint64_t>(part / 2) * sum;
    const auto into = pairs + (part % 2 == 0 ? 0 : static_cast<std::uint64_t>(swing.numerator));
    return nearestSample(beat, into, sum * static_cast<std::uint64_t>(pulses / 2), tempo, rate);
}

void checkSwing(const Meter& meter, std::int32_t pulses, SwungNotes notes, SampleRate rate) {
    for (const auto swing : ratios) {
        CAPTURE(swingText(swing));
        CAPTURE(rate.hertz);
        const auto track = swung(meter, pulses, swing, notes);
        const auto reported = pulsesOf(track, rate);
        REQUIRE(reported.size() == static_cast<std::size_t>(40 * meter.beatsPerBar() * pulses));
        for (std::size_t i = 0; i < reported.size(); ++i) {
            const auto part = static_cast<std::int32_t>(i) % pulses;
            const auto beat = i / static_cast<std::size_t>(pulses);
            if (reported[i].sample != place(beat, part, pulses, swing, track.stretches[0].tempo, rate))
                FAIL("pulse " << i << " at " << reported[i].sample);
            if (reported[i].part != part) FAIL("pulse " << i << " is part " << reported[i].part);
        }
    }
}

} // namespace

TEST_CASE("every swung pulse falls on the sample nearest to its exact place, in every ratio") {
    const auto sixEight = Meter::make(6, 8, BeatUnit::dottedQuarter).value();
    const auto cut = Meter::make(2, 2, BeatUnit::half).value();
    const auto waltz = Meter::make(3, 4, BeatUnit::dottedHalf).value();
    for (const int hertz : {44'100, 48'000, 96'000}) {
        checkSwing(Meter(), 2, SwungNotes::eighths, {hertz});
        checkSwing(Meter(), 4, SwungNotes::sixteenths, {hertz});
        checkSwing(cut, 4, SwungNotes::eighths, {hertz});
        checkSwing(cut, 8, SwungNotes::sixteenths, {hertz});
        checkSwing(sixEight, 6, SwungNotes::sixteenths, {hertz});
        checkSwing(waltz, 6, SwungNotes::eighths, {hertz});
    }
}

TEST_CASE("swing moves only the off pulse: beats, and pulses that make no pairs of its notes, stay") {
    const auto straight = [](std::int32_t pulses) {
        return pulsesOf(swung(Meter(), pulses, {1, 1}, SwungNotes::eighths), {48'000});
    };
    for (const std::int32_t pulses : {1, 3, 4, 5, 6, 7, 8}) {
        const auto bent = pulsesOf(swung(Meter(), pulses, {3, 1}, SwungNotes::eighths), {48'000});
        const auto even = straight(pulses);
        REQUIRE(bent.size() == even.size());
        for (std::size_t i = 0; i < bent.size(); ++i) CHECK(bent[i].sample == even[i].sample);
    }
    const auto bent = pulsesOf(swung(Meter(), 2, {3, 1}, SwungNotes::eighths), {48'000});
    const auto even = straight(2);
    for (std::size_t i = 0; i < bent.size(); ++i) CHECK((bent[i].sample == even[i].sample) == (i % 2 == 0));
}

TEST_CASE("swung 2:1 the off-beats are the last of the triplets") {
    auto track = swung(Meter(), 1, {2, 1}, SwungNotes::eighths);
    track.click.on = ClickOn::offbeats;
    auto triplets = track;
    triplets.click = {};
    triplets.subdivision = 3;
    std::vector<std::uint64_t> off;
    std::vector<std::uint64_t> last;
    for (const auto& pulse : pulsesOf(track, {44'100}))
        if (pulse.sounds) off.push_back(pulse.sample);
    for (const auto& pulse : pulsesOf(triplets, {44'100}))
        if (pulse.part == 2) last.push_back(pulse.sample);
    CHECK(off.size() == 160);
    CHECK(off == last);
}
