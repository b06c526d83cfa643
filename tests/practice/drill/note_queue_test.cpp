// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/drill/note_queue.h"

#include "../drill_fixture.h"

using namespace piolo;
using namespace piolo::practice;
using Kind = engine::Event::Kind;

namespace {

DrillNote note(Kind kind, std::uint64_t sample) {
    DrillNote made;
    made.event.kind = kind;
    made.event.sample = sample;
    return made;
}

} // namespace

TEST_CASE("notes are taken once, in order, and only the first of them wakes the taker") {
    NoteQueue queue;
    CHECK(queue.push(note(Kind::started, 1)));
    CHECK_FALSE(queue.push(note(Kind::pulse, 2)));
    const auto taken = queue.takeAll();
    REQUIRE(taken.size() == 2);
    CHECK(taken[0].audibleFrom() == 1);
    CHECK(taken[1].audibleFrom() == 2);
    CHECK(queue.takeAll().empty());
    CHECK(queue.push(note(Kind::pulse, 3)));
}

TEST_CASE("while nobody takes, pulses beyond the limit are left out and nothing else is") {
    NoteQueue queue;
    for (std::uint64_t i = 0; i < NoteQueue::most + 100; ++i) queue.push(note(Kind::pulse, i));
    for (std::uint64_t i = 0; i < 100; ++i) queue.push(note(Kind::runEnded, i));
    const auto taken = queue.takeAll();
    CHECK(taken.size() == NoteQueue::most + 100);
    CHECK(taken.back().event.kind == Kind::runEnded);
}

TEST_CASE("each event comes once as a note: journalled first, decided before it can be heard") {
    test::DrillFixture fixture;
    fixture.press();
    REQUIRE(fixture.playUntil(Kind::runEnded));
    fixture.play(0.2);
    std::uint64_t runs = 0;
    std::int64_t before = 0;
    std::size_t pulses = 0;
    for (const DrillNote& one : fixture.notes) {
        CHECK(one.decidedNanos >= before);
        before = one.decidedNanos;
        CHECK(fixture.sound.audibleAt(one.decidedNanos) <= one.audibleFrom());
        if (one.event.kind == Kind::pulse) ++pulses;
        if (one.event.kind != Kind::runEnded) continue;
        ++runs;
        REQUIRE(one.fact);
        CHECK(one.fact->id == fixture.record().entries.front().id);
    }
    CHECK(runs == 1);
    CHECK(pulses == 4 + 16 * 4); // the count-in, and four bars of sixteenths
}
