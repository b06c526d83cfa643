// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/time/tap_tempo.h"

#include "../seed.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <vector>

using namespace piolo;
using namespace piolo::testing;

namespace {

constexpr std::int64_t second = 1'000'000'000;
constexpr std::int64_t milli = 1'000'000;

std::int64_t beatAt(int bpm) { return 60 * second / bpm; }

TapTempo tapped(const std::vector<std::int64_t>& moments) {
    TapTempo taps;
    for (const auto moment : moments) taps.tap(moment);
    return taps;
}

std::vector<std::int64_t> steady(int bpm, int count, std::int64_t from = 7 * second) {
    std::vector<std::int64_t> moments;
    for (int i = 0; i < count; ++i) moments.push_back(from + i * 60 * second / bpm);
    return moments;
}

/// Of a normal distribution with a spread of 1: the same on every machine.
double normal(Dice& dice) {
    const auto even = [&] { return (static_cast<double>(dice() >> 11U) + 0.5) / 9007199254740992.0; };
    return std::sqrt(-2 * std::log(even())) * std::cos(2 * std::numbers::pi * even());
}

/// Each beat is `spread` of a beat too long or too short, and each tap half as much too early or too late.
std::vector<std::int64_t> byHand(Dice& dice, int bpm, int count, double spread) {
    const auto beat = static_cast<double>(beatAt(bpm));
    double place = 0;
    std::vector<std::int64_t> moments;
    for (int i = 0; i < count; ++i) {
        moments.push_back(7 * second + static_cast<std::int64_t>(place + normal(dice) * spread / 2 * beat));
        place += beat * (1 + normal(dice) * spread);
    }
    return moments;
}

/// How far from the true tempo, in percent: what half and what 19 of 20 counts of that many taps stay below.
struct Error {
    double half = 0;
    double most = 0;
};
Error errorOf(std::uint64_t seed, int count, double spread, double late = 0) {
    constexpr int trials = 2000;
    Dice dice(seed);
    std::vector<double> errors;
    for (int trial = 0; trial < trials; ++trial) {
        const int bpm = 40 + roll(dice, 161);
        auto moments = byHand(dice, bpm, count, spread);
        moments[static_cast<std::size_t>(roll(dice, count))] +=
            static_cast<std::int64_t>(late * static_cast<double>(beatAt(bpm)));
        const double found = tapped(moments).tempo()->thousandths() / 1000.0;
        errors.push_back(std::abs(found - bpm) / bpm * 100);
    }
    std::ranges::sort(errors);
    return {errors[trials / 2], errors[trials * 19 / 20]};
}

} // namespace

TEST_CASE("even taps give exactly their tempo, from the second on") {
    for (int bpm = 31; bpm <= 400; ++bpm)
        for (int count = 2; count <= 12; ++count) {
            CAPTURE(bpm);
            CAPTURE(count);
            CHECK(tapped(steady(bpm, count)).tempo() == Tempo::bpm(bpm));
        }
}

TEST_CASE("one tap is not a tempo") {
    CHECK_FALSE(TapTempo().tempo());
    CHECK_FALSE(tapped({second}).tempo());
}

TEST_CASE("when the taps come does not matter, only how far apart") {
    Dice dice(seed());
    for (int trial = 0; trial < 200; ++trial) {
        auto moments = byHand(dice, 40 + roll(dice, 200), 2 + roll(dice, 9), 0.05);
        const auto found = tapped(moments).tempo();
        for (auto& moment : moments) moment += 1000 * second;
        CHECK(tapped(moments).tempo() == found);
    }
}

TEST_CASE("one late tap among eight moves the tempo by no more than one beat per minute") {
    for (const int bpm : {60, 96, 144})
        for (std::size_t late = 0; late < 8; ++late) {
            CAPTURE(bpm);
            CAPTURE(late);
            auto moments = steady(bpm, 8);
            moments[late] += beatAt(bpm) / 3;
            const auto found = tapped(moments).tempo();
            REQUIRE(found);
            CHECK(std::abs(found->thousandths() - bpm * 1000) <= 1000);
        }
}

TEST_CASE("a silence of more than two seconds begins a new count") {
    auto moments = steady(60, 4);
    const auto next = moments.back() + TapTempo::longestPause;
    moments.push_back(next);
    CHECK(tapped(moments).taps() == 5);
    moments.back() = next + 1;
    CHECK(tapped(moments).taps() == 1);
    CHECK_FALSE(tapped(moments).tempo());
    moments.push_back(next + 1 + beatAt(100));
    CHECK(tapped(moments).tempo() == Tempo::bpm(100));
}

TEST_CASE("another tempo counts from its second beat on, slower or faster") {
    for (const auto& [before, after] : {std::pair{60, 120}, {120, 60}, {100, 130}, {130, 100}}) {
        CAPTURE(before);
        CAPTURE(after);
        auto taps = tapped(steady(before, 8));
        const auto last = steady(before, 8).back();
        taps.tap(last + beatAt(after));
        CHECK(taps.tempo() == Tempo::bpm(before)); // it may be one tap at the wrong moment
        taps.tap(last + 2 * beatAt(after));
        CHECK(taps.taps() == 3);
        CHECK(taps.tempo() == Tempo::bpm(after));
    }
}

TEST_CASE("a tap that is not later than the last one is ignored") {
    auto taps = tapped(steady(90, 3));
    taps.tap(steady(90, 3).back());
    taps.tap(0);
    CHECK(taps.taps() == 3);
    CHECK(taps.tempo() == Tempo::bpm(90));
}

TEST_CASE("the tempo is within its range however fast the taps are") {
    CHECK(tapped({0, 1, 2}).tempo() == Tempo::bpm(400));
    CHECK(tapped({0, 100 * milli, 200 * milli}).tempo() == Tempo::bpm(400));
}

TEST_CASE("measured: how far taps by hand are from the true tempo") {
    // Not the seeds that the rule was tried out with.
    for (const std::uint64_t drawn : {90'210, 90'211, 90'212}) {
        for (const int count : {4, 6, 8}) {
            const auto hand = errorOf(drawn, count, 0.04);
            const auto late = errorOf(drawn, count, 0.04, 0.25);
            MESSAGE("seed ", drawn, ", ", count, " taps: half within ", hand.half, " %, 19 of 20 within ",
                    hand.most, " %; with one a quarter of a beat late ", late.half, " % and ", late.most,
                    " %");
        }
        const auto hand = errorOf(drawn, 8, 0.04);
        CHECK(hand.half < 1.5);
        CHECK(hand.most < 4);
        const auto late = errorOf(drawn, 8, 0.04, 0.25);
        CHECK(late.half < 1.5);
        CHECK(late.most < 4.5);
    }
}
