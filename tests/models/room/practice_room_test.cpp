// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/room/practice_room.h"

#include "../../practice/book_fixture.h"
#include "../../practice/virtual_sound.h"

using namespace piolo;
using piolo::models::PracticeRoom;
using piolo::practice::DrillSession;
using piolo::test::BookFixture;

TEST_CASE("the next passage is that of the list, and of a scale the one that the grid suggests") {
    BookFixture fixture;
    const Id letterC = fixture.addPassage("Letter C", {}, 1);
    const Id letterD = fixture.addPassage("Letter D", {}, 9);
    const auto engine = std::make_shared<engine::DrillEngine>();
    test::VirtualSound sound{engine};
    PracticeRoom room(std::move(fixture.book), sound, engine, {}, fixture.path("config"),
                      DrillSession::Reading::byHand);
    room.openDrill(BookFixture::text(letterC));
    room.openNext();
    CHECK(room.drill()->passageText() == BookFixture::text(letterD));
    room.openNext();
    CHECK(room.drill()->passageText() == BookFixture::text(letterC));
    room.scales()->choices()->setInstrument("alto saxophone");
    room.scales()->choose(3, 5);
    room.drillScale(false);
    const QString chosen = room.drill()->passageText();
    room.openNext();
    CHECK(room.drill()->passageText() != chosen);
    CHECK(room.drill()->record()->passage.scale.has_value());
}

TEST_CASE("while a scale is played, the key for the next passage creates none") {
    BookFixture fixture;
    const auto engine = std::make_shared<engine::DrillEngine>();
    test::VirtualSound sound{engine};
    PracticeRoom room(std::move(fixture.book), sound, engine, {}, fixture.path("config"),
                      DrillSession::Reading::byHand);
    room.scales()->choices()->setInstrument("alto saxophone");
    room.scales()->choose(3, 5);
    room.drillScale(false);
    const QString played = room.drill()->passageText();
    room.drill()->start();
    for (int block = 0; block < 100; ++block) {
        sound.render();
        room.session().poll();
        room.drill()->tick();
    }
    REQUIRE(room.drill()->state() == models::DrillModel::State::Playing);
    const auto before = room.book().notebook().factCount();
    room.openNext();
    CHECK(room.drill()->passageText() == played);
    CHECK(room.book().notebook().factCount() == before);
}

TEST_CASE("a second window on one folder says so in one line, shows its content and records nothing") {
    BookFixture fixture;
    const Id passage = fixture.addPassage("Letter C");
    REQUIRE(fixture.book->flush(60'000));
    const auto engine = std::make_shared<engine::DrillEngine>();
    test::VirtualSound sound{engine};
    PracticeRoom room(fixture.anotherBook(), sound, engine, {}, fixture.path("config"),
                      DrillSession::Reading::byHand);
    CHECK(room.readOnly());
    CHECK(room.notice().startsWith(
        "Another window is using this practice folder, so nothing is recorded here;"));
    CHECK(room.passages()->count() == 1);
    const auto before = fixture.book->notebook().factCount();
    room.book().record(RunFact{passage, Tempo::bpm(60), Mark::clean, Reason::none, RunKind::run, 8'000, {}});
    room.passages()->remove(BookFixture::text(passage));
    CHECK(room.unsaved() == 0);
    fixture.book.reset();
    CHECK(fixture.anotherBook()->notebook().factCount() == before);
}
