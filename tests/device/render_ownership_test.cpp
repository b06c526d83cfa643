// SPDX-License-Identifier: GPL-3.0-or-later
#include "device/sound/render_ownership.h"

#include <doctest/doctest.h>

#include <thread>
#include <vector>

using namespace piolo::device;

namespace {
bool getsIn(RenderOwnership& gate, RenderOwnership::Number number) {
    return static_cast<bool>(Turn{gate, number});
}
} // namespace

TEST_CASE("nobody enters before claiming") {
    RenderOwnership gate;
    const auto number = gate.allot();
    CHECK_FALSE(getsIn(gate, number));
    CHECK(gate.claim(number));
    CHECK(getsIn(gate, number));
}

TEST_CASE("a superseded holder never enters again, whatever it claims") {
    RenderOwnership gate;
    const auto first = gate.allot();
    const auto second = gate.allot();
    CHECK(gate.claim(second));
    CHECK_FALSE(gate.claim(first));
    CHECK_FALSE(getsIn(gate, first));
    CHECK(gate.overtaken(first));
    CHECK_FALSE(gate.overtaken(second));
    CHECK(gate.holds(second));
}

TEST_CASE("claiming does not allow entry while the previous holder is inside") {
    RenderOwnership gate;
    const auto first = gate.allot();
    const auto second = gate.allot();
    REQUIRE(gate.claim(first));
    {
        const Turn turn{gate, first};
        REQUIRE(static_cast<bool>(turn));
        REQUIRE(gate.claim(second));
        CHECK(gate.busy());
        CHECK_FALSE(getsIn(gate, second));
        CHECK_FALSE(getsIn(gate, first));
    }
    CHECK_FALSE(gate.busy());
    CHECK(getsIn(gate, second));
    CHECK_FALSE(getsIn(gate, first));
}

TEST_CASE("four threads that constantly supersede each other are never inside together") {
    RenderOwnership gate;
    std::atomic<int> inside{0};
    std::atomic<int> together{0};
    std::atomic<std::uint64_t> turns{0};
    std::uint64_t counted = 0; // guarded by the render ownership alone
    const auto work = [&] {
        for (int round = 0; round < 20'000; ++round) {
            const auto number = gate.allot();
            gate.claim(number);
            for (int again = 0; again < 3; ++again) {
                const Turn turn{gate, number};
                if (!turn) continue;
                if (inside.fetch_add(1) != 0) ++together;
                ++counted;
                ++turns;
                inside.fetch_sub(1);
            }
        }
    };
    std::vector<std::thread> threads;
    for (int thread = 0; thread < 4; ++thread) threads.emplace_back(work);
    for (auto& thread : threads) thread.join();
    CHECK(together == 0);
    CHECK(counted == turns);
    CHECK(turns > 0);
}
