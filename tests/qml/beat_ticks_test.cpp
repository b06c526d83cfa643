// SPDX-License-Identifier: GPL-3.0-or-later
// The ticks under the beats are there only where the beat is divided.
#include "screen_fixture.h"

#include <doctest/doctest.h>

using namespace piolo;

TEST_CASE_FIXTURE(test::ScreenFixture, "a beat has ticks only where the click divides it") {
    open("drill");
    tap(Qt::Key_Space);
    play(0.5);
    CHECK(find("ticks-0") != nullptr);
    tap(Qt::Key_Escape);
    play(0.5);
    PassageFact edit;
    edit.passage = passage();
    edit.music = room().book().notebook().passage(passage())->passage.music;
    edit.music->subdivision = 1;
    room().book().record(edit);
    tap(Qt::Key_Space);
    play(0.5);
    CHECK(room().drill()->state() == models::DrillModel::State::Playing);
    CHECK(room().drill()->beats()->parts() == 1);
    CHECK(find("ticks-0") == nullptr);
}
