// SPDX-License-Identifier: GPL-3.0-or-later
// Three threads use one engine: one renders, one sends, one reads. Most useful under the thread sanitizer.
#include "engine/drill/drill_engine.h"

#include <doctest/doctest.h>

#include <array>
#include <atomic>
#include <cstdint>
#include <thread>

using namespace piolo;
using namespace piolo::engine;

TEST_CASE("the engine serves its three threads at once, and its reader misses no run") {
    constexpr std::uint64_t length = 8'000 * 400;
    DrillEngine engine;
    engine.prepare({8'000}, 256);
    Command start;
    start.kind = Command::Kind::start;
    start.plan.standing.tempo = Tempo::bpm(300);
    start.plan.bars = 1;
    start.plan.pauseAfterRuns = 0;
    REQUIRE(engine.send(start));

    std::atomic<bool> over{false};
    std::thread audio([&] {
        std::array<float, 256> out{};
        while (engine.rendered() < length) engine.render(out);
        over = true;
    });
    std::thread sender([&] {
        Command command;
        while (!over) {
            command.sample = engine.rendered();
            command.kind = command.sample % 5 == 0 ? Command::Kind::miss : Command::Kind::resume;
            engine.send(command);
            std::this_thread::yield();
        }
    });
    std::uint64_t ended = 0;
    bool inOrder = true;
    Event event;
    for (bool last = false; !last;) {
        last = over;
        while (engine.read(event)) {
            if (event.kind != Event::Kind::runEnded && event.kind != Event::Kind::lateMiss) continue;
            inOrder = inOrder && event.runsEnded == ++ended;
        }
    }
    audio.join();
    sender.join();
    CHECK(inOrder);
    CHECK(ended > 20);
}
