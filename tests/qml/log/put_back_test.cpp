// SPDX-License-Identifier: GPL-3.0-or-later
// What was taken back at the drill is named, and one button puts it back.
#include "../screen_fixture.h"

#include <doctest/doctest.h>

using namespace piolo;
using piolo::models::DrillModel;
using piolo::test::ScreenFixture;

namespace {

struct AfterARun : ScreenFixture {
    AfterARun() {
        open("drill");
        tap(Qt::Key_Space);
        play(26);
        tap(Qt::Key_Space); // misses the second run
        play(0.3);
        tap(Qt::Key_Escape);
        play(0.5);
        REQUIRE(drill().state() == DrillModel::State::Stopped);
    }
    [[nodiscard]] DrillModel& drill() { return *room().drill(); }
    [[nodiscard]] std::string sitting() { return drill().text()->sitting().toStdString(); }
    [[nodiscard]] std::string takenBack() { return drill().text()->takenBack().toStdString(); }
};

} // namespace

TEST_CASE_FIXTURE(AfterARun, "what was taken back is named, and a click puts it back") {
    const std::string before = sitting();
    const PassageRecord record = *drill().record();
    CHECK(find("putBack") == nullptr);
    click("back");
    CHECK(takenBack().starts_with("Taken back: miss at "));
    REQUIRE(find("putBack") != nullptr);
    click("back");
    CHECK(takenBack().starts_with("Taken back: clean run at "));
    CHECK(sitting().empty());
    click("putBack");
    CHECK(takenBack().starts_with("Taken back: miss at "));
    CHECK(sitting() == "1 run: 1 clean");
    touch(middleOf("putBack"));
    CHECK(takenBack().empty());
    CHECK(find("putBack") == nullptr);
    CHECK(sitting() == before);
    CHECK(*drill().record() == record);
    CHECK(warnings().empty());
}

TEST_CASE_FIXTURE(AfterARun,
                  "the button that puts back is reached by Tab, and Space after a click on it starts") {
    tap(Qt::Key_Backspace);
    press("putBack");
    CHECK(takenBack().empty());
    CHECK(drill().state() == DrillModel::State::Stopped);
    click("back");
    click("back");
    click("putBack");
    tap(Qt::Key_Space);
    play(0.3);
    CHECK(drill().state() == DrillModel::State::Playing);
    tap(Qt::Key_Escape);
    play(0.5);
    CHECK(takenBack().empty());
    CHECK(find("putBack") == nullptr);
}
