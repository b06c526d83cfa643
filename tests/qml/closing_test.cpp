// SPDX-License-Identifier: GPL-3.0-or-later
// Closing the window while the practice folder is not there.
#include "screen_fixture.h"

#include <doctest/doctest.h>

#include <QDir>
#include <QTest>

using namespace piolo;
using piolo::models::DrillModel;
using piolo::test::ScreenFixture;

namespace {

struct Closing : ScreenFixture {
    ~Closing() { CHECK(warnings().join("\n").toStdString() == ""); }
    [[nodiscard]] bool asks() const { return find("closingConfirm") != nullptr; }
    void loseFolder() {
        REQUIRE(QDir().rename(folder(), folder() + "-away"));
        room().book().record(
            RunFact{passage(), Tempo::bpm(80), Mark::clean, Reason::none, RunKind::run, 8'000, {}});
    }
};

} // namespace

TEST_CASE_FIXTURE(Closing, "a window whose marks are all saved closes without a question") {
    window().close();
    CHECK_FALSE(window().isVisible());
}

TEST_CASE_FIXTURE(Closing,
                  "closing with marks that are not saved asks first, also in the middle of a drill") {
    open("drill");
    tap(Qt::Key_Space);
    play(1);
    REQUIRE(room().drill()->state() == DrillModel::State::Playing);
    loseFolder();
    window().close();
    play(0.5);
    CHECK(window().isVisible());
    REQUIRE(asks());
    CHECK(room().drill()->state() == DrillModel::State::Stopped);
    QTest::keyClick(&window(), Qt::Key_Escape); // as Cancel
    play(0.1);
    CHECK_FALSE(asks());
    window().close();
    play(0.1);
    REQUIRE(asks());
    tap(Qt::Key_Space); // presses Cancel, and starts nothing
    play(0.1);
    CHECK_FALSE(asks());
    CHECK(room().drill()->state() == DrillModel::State::Stopped);
    window().close();
    play(0.1);
    click("closingConfirm");
    CHECK_FALSE(window().isVisible());
}

TEST_CASE_FIXTURE(Closing, "once the folder is back, nothing is asked and all of it is in there") {
    const std::size_t before = room().book().notebook().factCount();
    loseFolder();
    REQUIRE(QDir().rename(folder() + "-away", folder()));
    REQUIRE(room().book().flush(10'000));
    play(0.1);
    window().close();
    CHECK_FALSE(window().isVisible());
    CHECK(room().book().notebook().factCount() == before + 1);
    CHECK(room().unsaved() == 0);
}
