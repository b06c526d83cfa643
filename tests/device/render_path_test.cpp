// SPDX-License-Identifier: GPL-3.0-or-later
// Everything that a sound device's read triggers, down to the last sample, trips no tripwire.
#ifndef PIOLO_SANITIZED

#include "device/sound/pull_device.h"
#include "engine/drill/drill_engine.h"
#include "tripwire/tripwire.h"

#include <doctest/doctest.h>

#include <array>

using namespace piolo::device;
using namespace piolo::engine;
using namespace piolo::tripwire;

TEST_CASE("reads, measurements and underruns of a device trip no wire") {
    auto engine = std::make_shared<DrillEngine>();
    auto host = std::make_shared<RenderHost>(engine);
    Feed feed{host, host->gate().allot()};
    PullDevice device{feed, {false, 2}};
    REQUIRE(feed.take(44'100));
    Command start;
    start.kind = Command::Kind::start;
    REQUIRE(engine->send(start));
    std::array<char, 9'001> out{};
    std::uint64_t pulses = 0;
    const auto trips = tripsOf([&] {
        for (qint64 block = 0; block < 20'000; ++block) {
            device.read(out.data(), 1 + block * 37 % qint64{out.size()});
            feed.played(block * 10'000'000, block * 9'000, 44'100);
            if (block % 1'000 == 999) feed.ranDry(block * 10'000'000);
            for (Event event; engine->read(event);)
                if (event.kind == Event::Kind::pulse) ++pulses;
        }
    });
    INFO(textOf(trips));
    CHECK(trips == Trips{});
    CHECK(pulses > 100);
    CHECK(host->rendered() > 10'000'000);
}

#endif
