// SPDX-License-Identifier: GPL-3.0-or-later
// Practice dated in the future is shown in the log, and one day puts it right.
#include "../screen_fixture.h"
#include "practice/log/practice_book.h"

#include <doctest/doctest.h>

#include <QTest>

#include <string_view>

using namespace piolo;
using piolo::test::ScreenFixture;

namespace {

struct Ahead : ScreenFixture {
    Ahead() {
        constexpr std::int64_t century = 36'500LL * 86'400'000;
        clock().millis += century;
        room().book().record(
            RunFact{passage(), Tempo::bpm(72), Mark::clean, Reason::none, RunKind::run, 9'000, {}});
        clock().millis -= century;
    }
};

} // namespace

TEST_CASE_FIXTURE(Ahead,
                  "the log shows what is dated in the future; a click corrects it, another one undoes that") {
    for (const auto& [width, height] : {std::pair{1280, 800}, std::pair{600, 960}}) {
        resize(width, height);
        open("log");
        REQUIRE(find("futureDates") != nullptr);
        CHECK(find("futureDates")->property("text").toString().contains("1 entry is dated in the future"));
        click("putDatesRight");
        CHECK(find("futureDates") == nullptr);
        touch(middleOf("undoDates"));
        CHECK(find("futureDates") != nullptr);
    }
    CHECK(warnings().empty());
}

TEST_CASE_FIXTURE(Ahead, "the day is typed, and Return corrects the dates") {
    open("log");
    QQuickItem* const field = find("futureDatesDay");
    REQUIRE(field != nullptr);
    REQUIRE(QMetaObject::invokeMethod(field, "take"));
    for (const char key : std::string_view("30 April 2026")) QTest::keyClick(&window(), key);
    tap(Qt::Key_Return);
    CHECK(find("futureDates") == nullptr);
    CHECK(room().book().notebook().passage(passage())->lastDay == Date{2026, 4, 30});
}
