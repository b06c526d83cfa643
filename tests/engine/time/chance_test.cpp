// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/time/chance.h"

#include <doctest/doctest.h>

#include <array>
#include <cmath>

using namespace piolo::engine;

// The first outputs of splitmix64 for the seed 1477776061723855037; its state grows by the same constant
// before each. Source: github.com/rust-random/rngs, rand_xoshiro/src/splitmix64.rs, test "reference" (values
// of the authors' C program), read second-hand.
TEST_CASE("the mixing step is that of splitmix64, as published") {
    const std::array<std::uint64_t, 4> published{1985237415132408290ULL, 2979275885539914483ULL,
                                                 13511426838097143398ULL, 8488337342461049707ULL};
    std::uint64_t state = 1477776061723855037ULL;
    for (const auto value : published) {
        CHECK(mixed(state) == value);
        state += 0x9E37'79B9'7F4A'7C15ULL;
    }
}

TEST_CASE("a share of 0 never hits, a share of 100 always does") {
    const Chance chance{5, 1};
    for (std::int64_t bar = 0; bar < 1'000; ++bar) {
        CHECK_FALSE(chance.hits(0, 1, bar, 0));
        CHECK(chance.hits(100, 1, bar, 0));
    }
}

// Binomial distribution: of n draws with probability p, the number of hits is within 4·√(n·p·(1-p)) of n·p in
// all but one case in 15,000.
TEST_CASE("the share of hits is the share given, run by run, bar by bar, beat by beat") {
    constexpr int draws = 20'000;
    for (const std::int32_t percent : {1, 10, 25, 50, 90}) {
        const double share = percent / 100.0;
        const double bound = 4 * std::sqrt(draws * share * (1 - share));
        std::array<int, 4> hits{};
        for (int i = 0; i < draws; ++i) {
            const auto place = static_cast<std::uint64_t>(i);
            hits[0] += Chance{7, 1}.hits(percent, place, 0, 0) ? 1 : 0;
            hits[1] += Chance{7, 1}.hits(percent, 1, i, 0) ? 1 : 0;
            hits[2] += Chance{7, 1}.hits(percent, 1, i / 32, i % 32) ? 1 : 0;
            hits[3] += Chance{place, 2}.hits(percent, 1, 3, 1) ? 1 : 0;
        }
        for (const int count : hits) {
            CAPTURE(percent);
            CHECK(std::abs(count - draws * share) < bound);
        }
    }
}

TEST_CASE("neighbouring places draw independently") {
    constexpr int draws = 20'000;
    const Chance chance{11, 1};
    int both = 0;
    for (int i = 0; i < draws; ++i) both += chance.hits(50, 1, i, 0) && chance.hits(50, 1, i + 1, 0) ? 1 : 0;
    CHECK(std::abs(both - draws / 4) < 4 * std::sqrt(draws * 0.25 * 0.75));
}
