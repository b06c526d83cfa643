// SPDX-License-Identifier: GPL-3.0-or-later
#include "device/sound/feed.h"

#include "test_renderer.h"

#include <doctest/doctest.h>

#include <array>
#include <thread>

using namespace piolo::device;

namespace {

constexpr std::int64_t milli = 1'000'000;

struct House {
    std::shared_ptr<TestRenderer> renderer = std::make_shared<TestRenderer>();
    std::shared_ptr<RenderHost> host = std::make_shared<RenderHost>(renderer);
};

bool allAre(std::span<const float> samples, float value) {
    return std::all_of(samples.begin(), samples.end(), [value](float each) { return each == value; });
}

} // namespace

TEST_CASE("only the holder of the ownership gets sound; everyone else gets silence") {
    House house;
    Feed first{house.host, house.host->gate().allot()};
    Feed second{house.host, house.host->gate().allot()};
    std::array<float, 100> out{};
    out.fill(7);
    first.fill(out);
    CHECK(allAre(out, 0));
    REQUIRE(first.take(48'000));
    first.fill(out);
    CHECK(allAre(out, 1));
    REQUIRE(second.take(48'000));
    first.fill(out);
    CHECK(allAre(out, 0));
    second.fill(out);
    CHECK(allAre(out, 1));
    CHECK_FALSE(first.take(48'000));
    CHECK(house.host->rendered() == 200);
    CHECK(first.fills() == 3);
}

TEST_CASE("a change of ownership prepares only if the rate changes, and the sample count continues") {
    House house;
    for (const auto rate : {48'000, 48'000, 44'100}) {
        Feed feed{house.host, house.host->gate().allot()};
        REQUIRE(feed.take(rate));
        std::array<float, 480> out{};
        feed.fill(out);
    }
    CHECK(house.renderer->rates == std::vector<int>{48'000, 44'100});
    CHECK(house.host->rendered() == 1440);
}

TEST_CASE("a long request is rendered in blocks for which the renderer was prepared") {
    House house;
    Feed feed{house.host, house.host->gate().allot()};
    REQUIRE(feed.take(48'000));
    std::vector<float> out(3 * RenderHost::maxBlock + 17);
    feed.fill(out);
    CHECK(allAre(out, 1));
    CHECK_FALSE(house.renderer->tooLong);
}

TEST_CASE("the audible sample is between the one at take-over and the last one rendered") {
    House house;
    Feed feed{house.host, house.host->gate().allot()};
    REQUIRE(feed.take(48'000));
    std::array<float, 960> out{};
    for (int block = 0; block < 5; ++block) feed.fill(out);
    CHECK(house.host->audibleAt(0) == 0);
    feed.played(100 * milli, 20'000, 48'000);
    CHECK(house.host->audibleAt(100 * milli) == 960);
    CHECK(house.host->audibleAt(110 * milli) == 1440);
    CHECK(house.host->audibleAt(10'000 * milli) == 4800);
    CHECK(house.host->audibleAt(-10'000 * milli) == 0);
}

TEST_CASE("silence given to a device before its turn does not shift the audible sample") {
    House house;
    Feed feed{house.host, house.host->gate().allot()};
    std::array<float, 480> out{};
    feed.fill(out);
    REQUIRE(feed.take(48'000));
    feed.fill(out);
    feed.fill(out);
    feed.played(0, 15'000, 48'000);
    CHECK(house.host->audibleAt(0) == 240);
}

TEST_CASE("after an underrun the beat waits until the device is heard again") {
    House house;
    Feed feed{house.host, house.host->gate().allot()};
    REQUIRE(feed.take(48'000));
    std::array<float, 4800> out{};
    feed.fill(out);
    feed.played(0, 50'000, 48'000);
    feed.ranDry(50 * milli);
    CHECK(house.host->audibleAt(50 * milli) == 4800);
    feed.fill(out);
    CHECK(house.host->audibleAt(1000 * milli) == 4800);
    feed.played(1100 * milli, 110'000, 48'000);
    CHECK(house.host->audibleAt(1100 * milli) == 5280);
}

TEST_CASE("two threads that compete for the ownership never render at the same time") {
    House house;
    const auto work = [&] {
        std::array<float, 64> out{};
        for (int round = 0; round < 2000; ++round) {
            Feed feed{house.host, house.host->gate().allot()};
            feed.take(round % 2 == 0 ? 48'000 : 44'100);
            for (int block = 0; block < 4; ++block) {
                feed.fill(out);
                feed.played(round, block, 48'000);
            }
        }
    };
    std::thread other{work};
    work();
    other.join();
    CHECK(house.renderer->overlaps == 0);
    CHECK(house.renderer->frames == house.host->rendered());
    CHECK(house.host->rendered() > 0);
}
