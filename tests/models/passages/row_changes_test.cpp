// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/passages/row_changes.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <random>

using namespace piolo;
using namespace piolo::models;

namespace {

using Rows = std::vector<PassageRow>;

PassageRow row(std::uint64_t number, std::uint64_t piece = 0) {
    PassageRow made;
    made.id = Id{number, 1};
    made.piece = Id{piece, 2};
    return made;
}

Rows rows(std::initializer_list<std::uint64_t> numbers) {
    Rows made;
    for (const auto number : numbers) made.push_back(row(number));
    return made;
}

/// What a view does with the changes.
Rows changed(Rows list, const RowChanges& changes, const Rows& after) {
    for (const RowRun& run : changes.removed)
        list.erase(list.begin() + run.first, list.begin() + run.last + 1);
    for (const RowRun& run : changes.inserted)
        list.insert(list.begin() + run.first, after.begin() + run.first, after.begin() + run.last + 1);
    return list;
}

Rows someOf(const Rows& all, std::mt19937& random) {
    Rows some;
    std::ranges::copy_if(all, std::back_inserter(some), [&](const auto&) { return random() % 3 != 0; });
    return some;
}

} // namespace

TEST_CASE("the changes between two selections of one order lead from one to the other") {
    std::mt19937 random(20'261);
    Rows all;
    for (std::uint64_t i = 1; i <= 30; ++i) all.push_back(row(i, i / 7));
    for (int round = 0; round < 200; ++round) {
        const Rows before = someOf(all, random);
        const Rows after = someOf(all, random);
        const auto changes = rowChanges(before, after);
        REQUIRE(changes);
        REQUIRE(changed(before, *changes, after) == after);
    }
}

TEST_CASE("neighbours are one change") {
    const auto changes = rowChanges(rows({1, 2, 3, 7, 8}), rows({3, 4, 5, 6, 8}));
    REQUIRE(changes);
    CHECK(changes->removed == std::vector<RowRun>{{3, 3}, {0, 1}});
    CHECK(changes->inserted == std::vector<RowRun>{{1, 3}});
    CHECK(changes->inserted.front().count() == 3);
}

TEST_CASE("a row that moves, or one change too many, makes all rows again; another piece is another row") {
    CHECK(!rowChanges(rows({1, 2, 3}), rows({2, 1, 3})));
    const auto moved = rowChanges({row(1, 1)}, {row(1, 2)});
    REQUIRE(moved);
    CHECK(moved->removed.size() == 1);
    CHECK(moved->inserted.size() == 1);
    Rows all;
    Rows every;
    for (std::uint64_t i = 1; i <= mostRowChanges + 1; ++i) {
        all.push_back(row(2 * i));
        all.push_back(row(2 * i + 1));
        every.push_back(all.back());
    }
    CHECK(!rowChanges(all, every));
    all.erase(all.begin());
    CHECK(rowChanges(all, every));
}
