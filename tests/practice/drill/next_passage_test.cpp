// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/drill/next_passage.h"

#include <doctest/doctest.h>

#include <cstdint>
#include <vector>

using namespace piolo;
using practice::ListedPassage;
using practice::nextPassage;

namespace {

Id passage(std::uint64_t number) { return {0, number}; }

const Id first = passage(1);
const Id second = passage(2);
const Id third = passage(3);
const Id scale = passage(9);
const std::vector<ListedPassage> three{{first}, {second}, {third}};

Id noScale() { return {}; }
Id suggested() { return scale; }
/// Fails the test: it would create a passage that nobody asked for.
Id notAsked() {
    FAIL("a scale was asked for after a passage that is not one");
    return {};
}

Id after(Id current, const std::vector<ListedPassage>& list = three) {
    return nextPassage(current, false, list, notAsked);
}

} // namespace

TEST_CASE("the next passage is the next of the list, and after the last the first") {
    CHECK(after(first) == second);
    CHECK(after(second) == third);
    CHECK(after(third) == first);
}

TEST_CASE("a passage that the list does not show is followed by the first") {
    CHECK(after({}) == first);
    CHECK(after(passage(7)) == first);
}

TEST_CASE("removed passages are passed over, and one that was removed keeps its place") {
    const std::vector<ListedPassage> list{{first, true}, {second}, {third, true}};
    CHECK(after(first, list) == second);
    CHECK(after(third, list) == second);
    CHECK(after({}, list) == second);
}

TEST_CASE("there is no next passage if no other is left") {
    CHECK(after(first, {}).isNone());
    CHECK(after(first, {{first}}).isNone());
    CHECK(after(second, {{first, true}, {second}, {third, true}}).isNone());
    CHECK(after({}, {{first, true}}).isNone());
}

TEST_CASE("after a scale comes the one that the grid suggests, wherever it is in the list") {
    CHECK(nextPassage(first, true, three, suggested) == scale);
    CHECK(nextPassage(first, true, {}, suggested) == scale);
}

TEST_CASE("after a scale that the grid suggests again, or if it suggests none, comes the next of the list") {
    CHECK(nextPassage(scale, true, three, suggested) == first);
    CHECK(nextPassage(second, true, three, noScale) == third);
}
