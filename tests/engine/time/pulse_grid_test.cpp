// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/time/pulse_grid.h"

#include "engine/click/click_track.h"

#include <doctest/doctest.h>

#include <array>
#include <cmath>
#include <cstdint>
#include <string>
#include <vector>

using namespace piolo;
using namespace piolo::engine;

namespace {

/// numerator·factor/divisor in whole samples and the remainder, by long division digit by digit,
/// independently of the grid's single wide division.
struct LongDivision {
    std::uint64_t whole = 0;
    std::uint64_t rest = 0;
    LongDivision(std::uint64_t k, std::uint64_t factor, std::uint64_t divisor) {
        for (const char digit : std::to_string(k)) {
            const auto carried = rest * 10 + static_cast<std::uint64_t>(digit - '0') * factor;
            whole = whole * 10 + carried / divisor;
            rest = carried % divisor;
        }
    }
};

/// The sample nearest to k·60·rate/(tempo·n); halves round up.
std::uint64_t nearest(std::uint64_t k, Tempo tempo, SampleRate rate, std::int64_t n) {
    const auto divisor = static_cast<std::uint64_t>(tempo.thousandths()) * static_cast<std::uint64_t>(n);
    const LongDivision exact(k, 60'000ULL * static_cast<std::uint64_t>(rate.hertz), divisor);
    return exact.whole + (2 * exact.rest >= divisor ? 1U : 0U);
}

struct Case {
    const char* name;
    Tempo tempo;
    std::int64_t perBeat;
};

const std::array cases{Case{"137 in septuplets", Tempo::bpm(137), 7},
                       Case{"7/8 in eighths at 184", Tempo::bpm(184), 1},
                       Case{"6/8 in dotted quarters at 76, three to the beat", Tempo::bpm(76), 3},
                       Case{"72.5 in sixteenths", Tempo::clampedThousandths(72'500), 4},
                       Case{"10.001, one pulse", Tempo::clampedThousandths(10'001), 1},
                       Case{"400 in thirty-seconds", Tempo::bpm(400), 8}};

/// Compares all pulses of a track with the long division.
void checkTrack(const Meter& meter, std::int32_t subdivision, Tempo tempo, std::int64_t bars,
                SampleRate rate) {
    ClickTrack track;
    track.meter = meter;
    track.subdivision = subdivision;
    track.stretches = {{tempo, bars, false}};
    const auto pulses = pulsesOf(track, rate);
    REQUIRE(pulses.size() == static_cast<std::size_t>(bars * meter.beatsPerBar() * subdivision));
    for (std::size_t k = 0; k < pulses.size(); ++k)
        if (pulses[k].sample != nearest(k, tempo, rate, subdivision))
            FAIL("pulse " << k << " at " << rate.hertz);
}

} // namespace

TEST_CASE("every pulse falls on the sample nearest to its exact place") {
    for (const auto& one : cases)
        for (const int hertz : {8'000, 44'100, 48'000, 96'000, 192'000}) {
            CAPTURE(one.name);
            CAPTURE(hertz);
            const PulseGrid grid{{}, one.tempo, {hertz}, one.perBeat};
            std::uint64_t wrong = 0;
            for (std::uint64_t k = 0; k < 20'000; ++k)
                if (grid.sampleOf(k) != nearest(k, one.tempo, {hertz}, one.perBeat)) ++wrong;
            CHECK(wrong == 0);
        }
}

// floor(k·60000·rate / (thousandths·n) + 1/2), computed with Python 3.11's `fractions.Fraction`.
TEST_CASE("single pulses far out fall where exact fractions of another program put them") {
    struct Far {
        std::int32_t thousandths;
        std::int64_t perBeat;
        std::int32_t hertz;
        std::uint64_t k;
        std::uint64_t sample;
    };
    const std::array pulses{Far{137'000, 7, 48'000, 1, 3'003},
                            Far{137'000, 7, 48'000, 959, 2'880'000},
                            Far{137'000, 7, 44'100, 57'539, 158'757'241},
                            Far{137'000, 7, 96'000, 575'399, 3'455'993'994},
                            Far{72'500, 4, 44'100, 17'399, 158'750'876},
                            Far{184'000, 1, 96'000, 11'039, 345'568'696},
                            Far{76'000, 3, 44'100, 13'679, 158'748'395},
                            Far{10'001, 8, 192'000, 4'999, 719'784'022},
                            Far{399'999, 5, 8'000, 119'999, 28'799'832},
                            Far{208'000, 7, 48'000, 87'359, 172'798'022},
                            Far{63'000, 6, 44'100, 22'679, 158'753'000},
                            Far{84'125, 3, 48'000, 15'143, 172'805'706}};
    for (const auto& far : pulses) {
        const PulseGrid grid{{}, Tempo::clampedThousandths(far.thousandths), {far.hertz}, far.perBeat};
        CHECK(grid.sampleOf(far.k) == far.sample);
    }
}

TEST_CASE("a written track has every pulse at the nearest sample: 137 in septuplets, 7/8, 6/8, 72.5") {
    for (const int hertz : {44'100, 48'000, 96'000}) {
        checkTrack(Meter(), 7, Tempo::bpm(137), 200, {hertz});
        checkTrack(Meter::make(7, 8, BeatUnit::eighth).value(), 1, Tempo::bpm(184), 200, {hertz});
        checkTrack(Meter::make(6, 8, BeatUnit::dottedQuarter).value(), 3, Tempo::bpm(76), 200, {hertz});
        checkTrack(Meter(), 1, Tempo::clampedThousandths(72'500), 200, {hertz});
    }
}

TEST_CASE("an hour has not drifted by one sample") {
    for (const auto& one : cases)
        for (const int hertz : {44'100, 48'000, 96'000}) {
            CAPTURE(one.name);
            CAPTURE(hertz);
            const PulseGrid grid{{}, one.tempo, {hertz}, one.perBeat};
            const auto perHour = static_cast<std::uint64_t>(one.tempo.thousandths()) * 60U *
                                 static_cast<std::uint64_t>(one.perBeat) / 1000U;
            for (std::uint64_t k = perHour - 50; k <= perHour; ++k)
                CHECK(grid.sampleOf(k) == nearest(k, one.tempo, {hertz}, one.perBeat));
        }
    // Whole tempi return exactly to the hour.
    CHECK(PulseGrid{{}, Tempo::bpm(137), {48'000}, 7}.sampleOf(137U * 60U * 7U) == 48'000ULL * 3600U);
}

TEST_CASE("a half goes up") {
    // 44.1 kHz, 400 BPM, 8 pulses per beat: 826.875 samples per pulse.
    const PulseGrid grid{{}, Tempo::bpm(400), {44'100}, 8};
    CHECK(grid.sampleOf(4) == 3308); // 3307.5
    const PulseGrid late{{5, 1ULL << 63U}, Tempo::bpm(120), {48'000}, 1};
    CHECK(late.sampleOf(0) == 6); // 5.5
    const PulseGrid justBelow{{5, (1ULL << 63U) - 1}, Tempo::bpm(120), {48'000}, 1};
    CHECK(justBelow.sampleOf(0) == 5);
}

// Values computed from the definition and listed with the project's published checks (click grid): 48 kHz,
// 100 BPM: 28800, 14400, 9600, 7200, 5760, 4800, 4114.2857; 120 BPM: 24000 … 3428.5714 frames.
TEST_CASE("the frames of a beat and its parts at 100 and 120 BPM") {
    const std::array hundred{28'800.0, 14'400.0, 9'600.0, 7'200.0, 5'760.0, 4'800.0, 28'800.0 / 7};
    for (std::size_t n = 1; n <= hundred.size(); ++n) {
        const PulseGrid grid{{}, Tempo::bpm(100), {48'000}, static_cast<std::int64_t>(n)};
        const PulseGrid faster{{}, Tempo::bpm(120), {48'000}, static_cast<std::int64_t>(n)};
        CHECK(std::abs(static_cast<double>(grid.sampleOf(1)) - hundred[n - 1]) <= 0.5);
        CHECK(std::abs(static_cast<double>(faster.sampleOf(1)) - hundred[n - 1] * 100 / 120) <= 0.5);
    }
}

// The drift in ten minutes of a period rounded to whole samples, from the same list. The grid has none.
TEST_CASE("a rounded period would drift as published, the grid does not") {
    struct Drift {
        int hertz;
        int bpm;
        int n;
        double milliseconds;
    };
    const std::array drifts{Drift{48'000, 100, 7, -41.67}, Drift{48'000, 120, 7, 75.0},
                            Drift{44'100, 120, 4, 54.42}, Drift{44'100, 120, 7, 0.0}};
    for (const auto& drift : drifts) {
        const PulseGrid grid{{}, Tempo::bpm(drift.bpm), {drift.hertz}, drift.n};
        const auto pulses = static_cast<std::uint64_t>(drift.bpm * 10 * drift.n);
        const auto end = 600ULL * static_cast<std::uint64_t>(drift.hertz);
        CHECK(grid.sampleOf(pulses) == end);
        const auto rounded = static_cast<double>(grid.sampleOf(1) * pulses);
        CHECK((rounded - static_cast<double>(end)) * 1000 / drift.hertz ==
              doctest::Approx(drift.milliseconds).epsilon(0.001));
    }
}

TEST_CASE("the beats of a subdivided grid are the beats of the plain one") {
    for (const int hertz : {44'100, 48'000, 96'000})
        for (std::int64_t n = 1; n <= 8; ++n) {
            const PulseGrid plain{{}, Tempo::clampedThousandths(72'500), {hertz}, 1};
            const PulseGrid divided{{}, Tempo::clampedThousandths(72'500), {hertz}, n};
            for (std::uint64_t k = 0; k < 2'000; ++k)
                REQUIRE(plain.sampleOf(k) == divided.sampleOf(k * static_cast<std::uint64_t>(n)));
        }
}

namespace {

/// A number of samples with a binary fraction of 128 bits: enough to see what 64 bits lose.
struct Fine {
    unsigned __int128 whole = 0;
    unsigned __int128 fraction = 0;
    void add(std::uint64_t numerator, std::uint64_t divisor) {
        whole += numerator / divisor;
        std::uint64_t rest = numerator % divisor;
        unsigned __int128 bits = 0;
        for (int i = 0; i < 128; ++i) {
            rest *= 2;
            bits = (bits << 1U) | (rest >= divisor ? 1U : 0U);
            if (rest >= divisor) rest -= divisor;
        }
        fraction += bits;
        if (fraction < bits) ++whole;
    }
};

} // namespace

TEST_CASE("a thousand changes of tempo cost less than 2^-54 of a sample") {
    PulseGrid grid{{}, Tempo::bpm(60), {44'100}, 7};
    Fine exact;
    for (std::uint32_t change = 0; change < 1000; ++change) {
        grid.tempo = Tempo::clampedThousandths(60'001 + 137 * std::int64_t{change});
        const std::uint64_t pulses = 1 + change % 11;
        exact.add(pulses * 60'000ULL * 44'100ULL, static_cast<std::uint64_t>(grid.tempo.thousandths()) * 7U);
        grid.origin = grid.originAt(pulses);
    }
    CHECK(grid.origin.sample == static_cast<std::uint64_t>(exact.whole));
    const auto exactTop = static_cast<std::uint64_t>(exact.fraction >> 64U);
    const auto off = std::max(grid.origin.fraction, exactTop) - std::min(grid.origin.fraction, exactTop);
    CHECK(off < (1ULL << 10U)); // 2^-54 is 2^10 units of 2^-64
    CHECK(off > 0);             // the changes do cost something
}

TEST_CASE("an origin is rounded once, to the nearest 2^-64, and may carry into the sample") {
    const PulseGrid third{{}, Tempo::bpm(120), {8'000}, 3}; // 1333.333… samples per pulse
    CHECK(third.originAt(1).sample == 1333);
    CHECK(third.originAt(1).fraction == 0x5555555555555555ULL);
    CHECK(third.originAt(2).fraction == 0xAAAAAAAAAAAAAAABULL);
    const PulseGrid carried{{0, 0xFFFFFFFFFFFFFFFFULL}, Tempo::bpm(120), {8'000}, 3};
    CHECK(carried.originAt(1).sample == 1334);
    CHECK(carried.originAt(1).fraction == 0x5555555555555554ULL);
}
