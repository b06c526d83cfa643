// SPDX-License-Identifier: GPL-3.0-or-later
// Hearing the notes of a passage before playing them.
#include "../practice_fixture.h"
#include "core/time/fraction_sum.h"

using namespace piolo;
using piolo::models::DrillModel;
using piolo::test::PracticeFixture;
using Kind = engine::Event::Kind;

namespace {

std::vector<Note> fourBars() {
    std::vector<Note> notes;
    for (int quarter = 0; quarter < 16; ++quarter) {
        Note note;
        note.sounding = 60 + quarter;
        note.onset = *reducedFraction(quarter, 4);
        note.length = {1, 4};
        notes.push_back(note);
    }
    return notes;
}

/// The usual passage with notes.
struct NotedPassage : PracticeFixture {
    NotedPassage() {
        PassageFact fact;
        fact.passage = passageId;
        fact.notes = fourBars();
        book->record(fact);
    }
    [[nodiscard]] std::size_t factsOnDisk() {
        REQUIRE(book->flush(10'000));
        const auto contents = journal::readFolder(folder(), test::deskDevice, clock->now().utcMillis);
        REQUIRE(contents);
        return contents->facts.size();
    }
};

} // namespace

TEST_CASE("only a passage with known notes can be heard first") {
    PracticeFixture unknown;
    CHECK_FALSE(unknown.drill->listening()->possible());
    unknown.drill->listening()->toggle();
    CHECK_FALSE(unknown.drill->listening()->active());
    unknown.play(0.5);
    CHECK(unknown.notes.empty());
    NotedPassage known;
    CHECK(known.drill->listening()->possible());
}

TEST_CASE("a passage heard first logs nothing and moves neither tempo nor streak") {
    NotedPassage desk;
    desk.press();
    REQUIRE(desk.playUntil(Kind::runEnded));
    desk.drill->stop();
    desk.play(0.5);
    desk.drill->faster();
    const auto facts = desk.factsOnDisk();
    const Standing before = desk.standing();
    desk.drill->listening()->toggle();
    CHECK(desk.drill->listening()->active());
    CHECK(desk.drill->state() == DrillModel::State::Stopped);
    REQUIRE(desk.playUntil(Kind::playbackEnded));
    CHECK(desk.found.tempo == Tempo::bpm(85)); // the tempo set by hand
    desk.play(0.5);
    CHECK_FALSE(desk.drill->listening()->active());
    CHECK(desk.factsOnDisk() == facts);
    CHECK(desk.standing() == before);
    CHECK(desk.drill->streak() == 0); // for the tempo set by hand, still to come
    CHECK(desk.drill->text()->opening() != "");
}

TEST_CASE("what is heard is the count-in, the bars and nothing after them, and the beats are shown") {
    NotedPassage desk;
    desk.drill->listening()->toggle();
    bool counted = false;
    REQUIRE(desk.playUntil(Kind::playbackBegan));
    for (int block = 0; block < 200; ++block) {
        desk.step();
        counted = counted || desk.drill->beats()->counting();
    }
    CHECK(counted);
    REQUIRE(desk.playUntil(Kind::playbackEnded));
    // Five bars of four beats at 84 BPM.
    CHECK(std::abs(static_cast<double>(desk.found.sample) / test::VirtualSound::rate - 20 * 60.0 / 84) <
          0.05);
    desk.play(0.5);
    CHECK(desk.drill->beats()->beat() == -1);
}

TEST_CASE("stop ends the playback, and so does the key that began it") {
    NotedPassage desk;
    for (const bool byItsKey : {false, true}) {
        desk.drill->listening()->toggle();
        desk.play(1);
        CHECK(desk.drill->listening()->active());
        if (byItsKey)
            desk.drill->listening()->toggle();
        else
            desk.drill->stop();
        CHECK_FALSE(desk.drill->listening()->active());
        REQUIRE(desk.playUntil(Kind::playbackEnded));
    }
    CHECK(desk.onDisk<RunFact>().empty());
}

TEST_CASE("a playback started right after another was stopped is heard to its end") {
    NotedPassage desk;
    desk.drill->listening()->toggle();
    desk.drill->stop();
    desk.drill->listening()->toggle();
    desk.play(5);
    CHECK(desk.drill->listening()->active());
    desk.play(10);
    CHECK_FALSE(desk.drill->listening()->active());
}

TEST_CASE("starting the drill ends the playback, and its runs count as always") {
    NotedPassage desk;
    desk.drill->listening()->toggle();
    desk.play(1);
    desk.press();
    CHECK_FALSE(desk.drill->listening()->active());
    CHECK(desk.drill->state() == DrillModel::State::Playing);
    REQUIRE(desk.playUntil(Kind::playbackEnded));
    desk.drill->listening()->toggle();
    CHECK_FALSE(desk.drill->listening()->active());
    REQUIRE(desk.playUntil(Kind::runEnded));
    CHECK(desk.standing() == Standing{Tempo::bpm(84), 1});
    CHECK(desk.onDisk<RunFact>().size() == 1);
}
