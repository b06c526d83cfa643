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
        const auto contents = journal::readFolder(folder(), test::testDevice);
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
    NotedPassage fixture;
    fixture.press();
    REQUIRE(fixture.playUntil(Kind::runEnded));
    fixture.drill->stop();
    fixture.play(0.5);
    fixture.drill->faster();
    const auto facts = fixture.factsOnDisk();
    const Standing before = fixture.standing();
    fixture.drill->listening()->toggle();
    CHECK(fixture.drill->listening()->active());
    CHECK(fixture.drill->state() == DrillModel::State::Stopped);
    REQUIRE(fixture.playUntil(Kind::playbackEnded));
    CHECK(fixture.found.tempo == Tempo::bpm(85)); // the tempo set by hand
    fixture.play(0.5);
    CHECK_FALSE(fixture.drill->listening()->active());
    CHECK(fixture.factsOnDisk() == facts);
    CHECK(fixture.standing() == before);
    CHECK(fixture.drill->streak() == 0); // for the tempo set by hand, still to come
    CHECK(fixture.drill->text()->opening() != "");
}

TEST_CASE("what is heard is the count-in, the bars and nothing after them, and the beats are shown") {
    NotedPassage fixture;
    fixture.drill->listening()->toggle();
    bool counted = false;
    REQUIRE(fixture.playUntil(Kind::playbackBegan));
    for (int block = 0; block < 200; ++block) {
        fixture.step();
        counted = counted || fixture.drill->beats()->counting();
    }
    CHECK(counted);
    REQUIRE(fixture.playUntil(Kind::playbackEnded));
    // Five bars of four beats at 84 BPM.
    CHECK(std::abs(static_cast<double>(fixture.found.sample) / test::VirtualSound::rate - 20 * 60.0 / 84) <
          0.05);
    fixture.play(0.5);
    CHECK(fixture.drill->beats()->beat() == -1);
}

TEST_CASE("stop ends the playback, and so does the key that began it") {
    NotedPassage fixture;
    for (const bool byItsKey : {false, true}) {
        fixture.drill->listening()->toggle();
        fixture.play(1);
        CHECK(fixture.drill->listening()->active());
        if (byItsKey)
            fixture.drill->listening()->toggle();
        else
            fixture.drill->stop();
        CHECK_FALSE(fixture.drill->listening()->active());
        REQUIRE(fixture.playUntil(Kind::playbackEnded));
    }
    CHECK(fixture.onDisk<RunFact>().empty());
}

TEST_CASE("a playback started right after another was stopped is heard to its end") {
    NotedPassage fixture;
    fixture.drill->listening()->toggle();
    fixture.drill->stop();
    fixture.drill->listening()->toggle();
    fixture.play(5);
    CHECK(fixture.drill->listening()->active());
    fixture.play(10);
    CHECK_FALSE(fixture.drill->listening()->active());
}

TEST_CASE("starting the drill ends the playback, and its runs count as always") {
    NotedPassage fixture;
    fixture.drill->listening()->toggle();
    fixture.play(1);
    fixture.press();
    CHECK_FALSE(fixture.drill->listening()->active());
    CHECK(fixture.drill->state() == DrillModel::State::Playing);
    REQUIRE(fixture.playUntil(Kind::playbackEnded));
    fixture.drill->listening()->toggle();
    CHECK_FALSE(fixture.drill->listening()->active());
    REQUIRE(fixture.playUntil(Kind::runEnded));
    CHECK(fixture.standing() == Standing{Tempo::bpm(84), 1});
    CHECK(fixture.onDisk<RunFact>().size() == 1);
}
