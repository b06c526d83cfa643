// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/room/practice_room.h"

#include "../../practice/book_fixture.h"
#include "../../practice/virtual_sound.h"

using namespace piolo;
using piolo::models::PracticeRoom;
using piolo::practice::DrillSession;
using piolo::test::BookFixture;

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
