// SPDX-License-Identifier: GPL-3.0-or-later
#include "device/sound/audible_clock.h"

#include <doctest/doctest.h>

#include <cmath>
#include <thread>

using namespace piolo::device;

namespace {
constexpr std::int64_t milli = 1'000'000;
constexpr std::int64_t step = 100 * milli;
constexpr std::int32_t rate = 48'000;
} // namespace

TEST_CASE("a parked clock does not move until the device is heard") {
    AudibleClock clock;
    clock.park(1000, rate);
    CHECK(clock.at(0) == 1000);
    CHECK(clock.at(5000 * milli) == 1000);
    clock.correct(10 * milli, 1000);
    CHECK(clock.at(5000 * milli) == 1000);
    clock.correct(20 * milli, 1480);
    CHECK(clock.at(20 * milli) == doctest::Approx(1480));
    CHECK(clock.at(120 * milli) == doctest::Approx(6280));
}

TEST_CASE("no position before the one at which it was parked is reported again") {
    AudibleClock clock;
    clock.park(1000, rate);
    clock.anchor(step, 2000, rate);
    CHECK(clock.at(0) == 1000);
    CHECK(clock.at(step) == 2000);
    CHECK(clock.at(2 * step) == 6800);
}

TEST_CASE("measurements that are off by milliseconds hardly move it, and never backwards") {
    AudibleClock clock;
    clock.anchor(0, 0, rate);
    double before = 0;
    double worst = 0;
    for (int look = 1; look <= 600; ++look) {
        const auto now = look * step;
        const auto noise = (look % 2 == 0 ? 6.0 : -6.0) * rate / 1000;
        const auto truth = static_cast<double>(now) * rate / 1e9;
        clock.correct(now, truth + noise);
        for (int part = 0; part < 10; ++part) {
            const auto reported = clock.at(now + part * step / 10);
            CHECK(reported >= before);
            before = reported;
            if (look > 60) worst = std::max(worst, std::abs(reported - truth - part * rate / 100.0));
        }
    }
    CHECK(worst < rate / 1000.0);
}

TEST_CASE("the clock follows a device that is slightly fast") {
    AudibleClock clock;
    clock.anchor(0, 0, rate);
    double truth = 0;
    for (int look = 1; look <= 1200; ++look) {
        truth += 4800 * 1.0002;
        clock.correct(look * step, truth);
    }
    CHECK(std::abs(clock.at(1200 * step) - truth) < rate / 1000.0);
}

TEST_CASE("an error beyond a tenth of a second restarts the line") {
    AudibleClock clock;
    clock.anchor(0, 0, rate);
    clock.correct(step, 48'000);
    CHECK(clock.at(step) == doctest::Approx(48'000));
}

TEST_CASE("a reader never sees a half-written line") {
    AudibleClock clock;
    std::atomic<bool> over{false};
    // Every line written passes through (0, 1000); a mixture of two lines almost never does.
    clock.anchor(0, 1000, 1);
    std::thread writer{[&] {
        for (int turn = 0; turn < 200'000; ++turn) {
            const auto seconds = turn % 100;
            const auto perSecond = turn % 7;
            clock.anchor(-seconds * 1'000'000'000LL, 1000 - seconds * perSecond, perSecond);
        }
        over = true;
    }};
    std::uint64_t reads = 0;
    std::uint64_t torn = 0;
    while (!over || reads == 0) {
        if (clock.at(0) != 1000) ++torn;
        ++reads;
    }
    writer.join();
    CHECK(torn == 0);
}
