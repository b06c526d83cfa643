// SPDX-License-Identifier: GPL-3.0-or-later
// render() takes no memory.
#include "allocation_count.h"
#include "drill_script.h"

#include "engine/click_track.h"
#include "engine/drill_engine.h"

#include <doctest/doctest.h>

#include <array>
#include <span>
#include <vector>

#ifndef PIOLO_SANITIZED

using namespace piolo;
using namespace piolo::engine;

TEST_CASE("the tripwire is live: it sees an allocation") {
    const AllocationCount count;
    auto* one = new std::vector<int>(10);
    delete one;
    CHECK(count.value() == 4);
}

TEST_CASE("the drill renders, obeys and tells without taking memory") {
    Random random(3);
    DrillEngine engine;
    engine.prepare({48'000}, 4'096);
    constexpr std::uint64_t length = 120 * 48'000;
    const auto script = anyScript(random, 48'000, length, 24'000);
    std::array<float, 4'096> out{};
    std::size_t sent = 0;
    std::uint64_t told = 0;
    std::uint64_t blocks = 0;
    const AllocationCount count;
    while (engine.rendered() < length) {
        for (; sent < script.size() && script[sent].sample <= engine.rendered(); ++sent)
            engine.send(script[sent].command);
        engine.render(std::span(out).first(1 + random() % out.size()));
        ++blocks;
        for (Event event; engine.read(event);) ++told;
    }
    CHECK(count.value() == 0);
    CHECK(blocks > 2'000);
    CHECK(told > 100);
    CHECK(sent > 100);
}

TEST_CASE("a written track renders without taking memory") {
    ClickTrack track;
    track.subdivision = 7;
    track.stretches = {{Tempo::bpm(137), 1, true}, {Tempo::bpm(300), 40, false}};
    TrackPlayer player(track);
    player.prepare({48'000}, 512);
    std::array<float, 509> out{};
    const AllocationCount count;
    for (int block = 0; block < 4'000; ++block) player.render(out);
    CHECK(count.value() == 0);
}

#endif
