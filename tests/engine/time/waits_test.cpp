// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/drill/drill_measure.h"
#include "engine/time/breaths.h"
#include "engine/time/waits.h"

#include <doctest/doctest.h>

using namespace piolo;
using namespace piolo::engine;

namespace {

Waits twoWaits() {
    Waits waits;
    waits.add({8, 3});
    waits.add({9, 2});
    return waits;
}

} // namespace

TEST_CASE("while a run waits, its bars stop, and then they continue where they stopped") {
    const auto waits = twoWaits();
    const std::uint64_t places[] = {0, 1, 2, 3, 4, 5, 6, 7, 8, 8, 8, 8, 9, 9, 9, 10, 11};
    const bool waiting[] = {false, false, false, false, false, false, false, false, true,
                            true,  true,  false, true,  true,  false, false, false};
    for (std::uint64_t tick = 0; tick < std::size(places); ++tick) {
        CAPTURE(tick);
        CHECK(waits.after(tick).place == places[tick]);
        CHECK(waits.after(tick).waits == waiting[tick]);
    }
    CHECK(waits.total() == 5);
}

TEST_CASE("a place comes after the waits before it, including its own") {
    const auto waits = twoWaits();
    for (std::uint64_t place = 0; place < 20; ++place) {
        const auto stand = waits.after(place + waits.before(place));
        CHECK(stand.place == place);
        CHECK_FALSE(stand.waits);
    }
    CHECK(Waits().none());
    CHECK(Waits().after(7).place == 7);
}

TEST_CASE("breath places are counted from the part's first bar; those before the pick-up are left out") {
    ClickPattern pattern;
    pattern.breaths = {{40, 1, 1}, {42, 2, 1}, {43, 1, 2}, {45, 4, 8}};
    const auto breaths = Breaths::of(pattern, 43);
    REQUIRE(breaths.count == 3);
    CHECK(breaths.places[0] == BreathPlace{-1, 1, 1});
    CHECK(breaths.places[1] == BreathPlace{0, 0, 2});
    CHECK(breaths.places[2] == BreathPlace{2, 3, 8});
}

TEST_CASE("a stretch lasts longer by the waits inside it, and only below the tempo") {
    ClickPattern pattern;
    pattern.breaths = {{1, 1, 8}, {1, 3, 1}, {2, 4, 2}, {3, 1, 4}};
    pattern.breathBelow = Tempo::bpm(80);
    const auto breaths = Breaths::of(pattern, 1);
    CHECK(breaths.beatsIn(2, 4, Tempo::bpm(79)) == 3);
    CHECK(breaths.beatsIn(3, 4, Tempo::bpm(79)) == 7);
    CHECK(breaths.beatsIn(2, 3, Tempo::bpm(79)) == 1);
    CHECK(breaths.beatsIn(3, 4, Tempo::bpm(80)) == 0);
}

TEST_CASE("a plan outside its limits is brought into them") {
    DrillPlan wild;
    wild.subdivision = 3;
    wild.swing = {7, 0};
    wild.click.barsOn = 0;
    wild.click.barsOff = -4;
    wild.click.accented = 1'000;
    wild.breaths.count = 1'000;
    wild.breaths.places[0] = {3, 1, 100};
    wild.breaths.places[1] = {2, 1, 1};
    const auto plan = inRange(wild);
    CHECK(plan.swing == Fraction{1, 1});
    CHECK(plan.click.barsOn == 1);
    CHECK(plan.click.barsOff == 0);
    CHECK(plan.click.accented == 32);
    REQUIRE(plan.breaths.count == 1);
    CHECK(plan.breaths.places[0] == BreathPlace{3, 1, 8});
}
