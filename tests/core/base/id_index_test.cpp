// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/id_index.h"

#include "../seed.h"

#include <doctest/doctest.h>
#include <unordered_map>

using namespace piolo;
using namespace piolo::testing;

TEST_CASE("an id keeps its first number, however many others there are") {
    INFO("PIOLO_SEED=", seed());
    Dice dice(seed());
    IdIndex index;
    std::unordered_map<Id, std::uint32_t> naive;
    for (std::uint32_t number = 0; number < 30'000; ++number) {
        // A few different ids, both small and random ones.
        const std::uint64_t low = static_cast<std::uint64_t>(roll(dice, 9000));
        const Id id{roll(dice, 2) == 0 ? 0 : low * 0x1234'5678'9ABC'DEF1, low};
        index.expect(id);
        const auto [kept, isNew] = naive.try_emplace(id, number);
        REQUIRE(index.keep(id, number) == std::pair(kept->second, isNew));
    }
    CHECK(index.size() == naive.size());
}

TEST_CASE("ids whose hashes have the same upper half stay distinct") {
    // The hash is high ^ low * an odd number: if high is that multiple of low, they cancel out.
    IdIndex index;
    const auto twin = [](std::uint64_t low) { return Id{low * 0x9E37'79B9'7F4A'7C15ULL, low}; };
    for (std::uint32_t number = 0; number < 500; ++number)
        CHECK(index.keep(twin(number), number) == std::pair(number, true));
    for (std::uint32_t number = 0; number < 500; ++number)
        CHECK(index.keep(twin(number), 0) == std::pair(number, false));
}

TEST_CASE("reserving room changes nothing") {
    IdIndex index;
    index.keep({1, 2}, 7);
    index.reserve(100'000);
    CHECK(index.keep({1, 2}, 8) == std::pair<std::uint32_t, bool>(7, false));
    CHECK(index.size() == 1);
}
