// SPDX-License-Identifier: GPL-3.0-or-later
#include "journal/folder/ports.h"

#include <chrono>
#include <doctest/doctest.h>
#include <set>

using namespace piolo;
using namespace piolo::journal;

TEST_CASE("the system's clock is the system's clock") {
    const auto before = std::chrono::system_clock::now();
    const Timestamp now = systemClock()->now();
    const auto after = std::chrono::system_clock::now();
    using std::chrono::milliseconds;
    CHECK(now.utcMillis >= std::chrono::floor<milliseconds>(before.time_since_epoch()).count());
    CHECK(now.utcMillis <= std::chrono::floor<milliseconds>(after.time_since_epoch()).count());
    CHECK(std::abs(now.offsetMinutes) <= 14 * 60);
}

TEST_CASE("no random id is repeated, and none is all zero") {
    const auto randomness = systemRandomness();
    std::set<Id> ids;
    for (int i = 0; i < 1000; ++i) ids.insert(randomness->id());
    CHECK(ids.size() == 1000);
    CHECK(ids.count(Id{}) == 0);
}
