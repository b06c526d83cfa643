// SPDX-License-Identifier: GPL-3.0-or-later
// The log screen by mouse and keys.
#include "models/log/log_curves_item.h"
#include "screen_shots.h"

#include <doctest/doctest.h>

#include <QFile>
#include <QTemporaryDir>
#include <QTest>

using namespace piolo;
using piolo::models::LogCurvesItem;
using piolo::test::keepShot;
using piolo::test::ScreenFixture;

namespace {

struct LogScreen {
    explicit LogScreen(bool emptyFolder = false) : fixture(emptyFolder) {
        fixture.room().setScreen("log");
        fixture.play(0.1);
    }
    ~LogScreen() { CHECK(fixture.warnings().join("\n").toStdString() == ""); }

    void press(const char* name) { fixture.click(QString::fromLatin1(name)); }
    void key(Qt::Key key, Qt::KeyboardModifiers with = Qt::NoModifier) {
        QTest::keyClick(&fixture.window(), key, with);
        fixture.play(0.02);
    }
    /// Opens the first line of the newest day.
    void openLine() {
        QQuickItem* line = fixture.find("logLine");
        REQUIRE(line != nullptr);
        line->forceActiveFocus(Qt::TabFocusReason);
        key(Qt::Key_Return);
    }
    [[nodiscard]] models::LogModel& log() { return *fixture.room().log(); }
    [[nodiscard]] LogCurvesItem& curves() {
        auto* item = qobject_cast<LogCurvesItem*>(fixture.find("logCurves"));
        REQUIRE(item != nullptr);
        return *item;
    }
    [[nodiscard]] bool says(const QString& words) const {
        for (QQuickItem* item : fixture.shown())
            if (item->inherits("QQuickText") && item->property("text").toString().contains(words))
                return true;
        return false;
    }
    [[nodiscard]] std::size_t entries() {
        return fixture.room().book().notebook().passage(fixture.passage())->entries.size();
    }
    ScreenFixture fixture;
};

} // namespace

TEST_CASE("an entry made by mistake is taken back, named, and put back") {
    LogScreen screen;
    const std::size_t before = screen.entries();
    screen.openLine();
    CHECK(screen.fixture.find("putBack") == nullptr);
    screen.press("takeEntryBack");
    CHECK(screen.entries() == before - 1);
    CHECK(screen.says("Taken back: "));
    keepShot(screen.fixture.shot(), "log-take-back");
    screen.press("putBack");
    CHECK(screen.entries() == before);
    CHECK(!screen.says("Taken back: "));
    CHECK(screen.fixture.find("putBack") == nullptr);
}

TEST_CASE("a note is typed beside its run") {
    LogScreen screen;
    screen.openLine();
    screen.press("writeNote");
    for (const char letter : std::string("side key")) QTest::keyClick(&screen.fixture.window(), letter);
    screen.key(Qt::Key_Return);
    CHECK(screen.says("side key"));
    CHECK(screen.fixture.room().book().notebook().passage(screen.fixture.passage())->notes.size() == 1);
}

TEST_CASE("only the visible days are created, however long the log") {
    LogScreen screen;
    QQuickItem* list = screen.fixture.find("logList");
    REQUIRE(list != nullptr);
    const auto made = [&] {
        int days = 0;
        for (QQuickItem* item : screen.fixture.shown()) days += item->objectName() == "logDay" ? 1 : 0;
        return days;
    };
    CHECK(screen.log().count() == 12);
    CHECK(made() >= 1);
    CHECK(made() <= 6);
    list->forceActiveFocus(Qt::TabFocusReason);
    screen.key(Qt::Key_End);
    screen.fixture.play(0.1);
    CHECK(made() >= 1);
    CHECK(made() <= 6);
    CHECK(list->property("contentY").toReal() > 0);
}

TEST_CASE("the curves are zoomed, moved and read by keys, and laid out once for each view") {
    LogScreen screen;
    LogCurvesItem& curves = screen.curves();
    (void)screen.fixture.shot();
    const int first = curves.layouts();
    (void)screen.fixture.shot();
    CHECK(curves.layouts() == first); // a frame does not cause another layout
    CHECK(curves.whole());
    curves.forceActiveFocus(Qt::TabFocusReason);
    const auto all = curves.view();
    screen.key(Qt::Key_Plus);
    CHECK(curves.view().to - curves.view().from == doctest::Approx((all.to - all.from) / 2));
    const auto zoomed = curves.view();
    screen.key(Qt::Key_Left);
    CHECK(curves.view().from < zoomed.from);
    CHECK(curves.view().from >= all.from);
    screen.key(Qt::Key_0);
    CHECK(curves.whole());
    CHECK(curves.pointedText() == "");
    screen.key(Qt::Key_Right, Qt::ShiftModifier);
    CHECK(curves.pointedText().contains("clean"));
    const QString last = curves.pointedText();
    screen.key(Qt::Key_Left, Qt::ShiftModifier);
    CHECK(curves.pointedText() != last);
    keepShot(screen.fixture.shot(), "log-pointed");
    curves.setBy("runs");
    CHECK(curves.pointedText() == "");
    (void)screen.fixture.shot();
    CHECK(curves.layouts() > first);
}

TEST_CASE("without matches the log says so, and an empty one says what will be here") {
    LogScreen screen;
    screen.log().setKind("silent");
    screen.fixture.play(0.05);
    CHECK(screen.says("No entries match these filters"));
    LogScreen empty(true);
    CHECK(empty.says("You have not played anything yet"));
    CHECK(empty.says("The curve starts with your first run."));
    keepShot(empty.fixture.shot(), "log-empty");
}

TEST_CASE("one key makes a passage of the bars that break, linked to its parent; in a note it is a letter") {
    LogScreen screen;
    screen.fixture.room().keys()->listener().setBounceMillis(0); // a test presses faster than a finger
    screen.log().setPassage(QString::fromStdString(screen.fixture.passage().text()));
    const auto count = [&] { return screen.fixture.room().book().notebook().passages().size(); };
    const std::size_t before = count();
    screen.key(Qt::Key_N);
    CHECK(count() == before); // nothing is highlighted yet
    for (int run = 0; run < 4; ++run) {
        RunFact missed;
        missed.passage = screen.fixture.passage();
        missed.tempo = Tempo::bpm(80);
        missed.mark = Mark::missed;
        missed.spots = {{43, 3}};
        screen.fixture.room().book().record(missed);
    }
    screen.fixture.play(0.05);
    screen.openLine();
    screen.press("writeNote");
    screen.key(Qt::Key_N);
    CHECK(count() == before);
    screen.key(Qt::Key_Escape);
    screen.fixture.find("makeStretch")->forceActiveFocus(Qt::TabFocusReason);
    screen.key(Qt::Key_N);
    REQUIRE(count() == before + 1);
    const auto made = screen.fixture.room().book().notebook().passages().back();
    CHECK(screen.fixture.room().book().notebook().passage(made)->passage.title.origin ==
          screen.fixture.passage());
}

TEST_CASE("a passage made from the last bars can be drilled at once") {
    LogScreen screen;
    screen.log().setPassage(QString::fromStdString(screen.fixture.passage().text()));
    for (int run = 0; run < 4; ++run)
        screen.fixture.room().book().record(RunFact{screen.fixture.passage(),
                                                    Tempo::bpm(80),
                                                    Mark::missed,
                                                    Reason::none,
                                                    RunKind::run,
                                                    8'000,
                                                    {{43, 3}}});
    screen.fixture.play(0.05);
    keepShot(screen.fixture.shot(), "log-breaks");
    screen.press("buildUp");
    CHECK(screen.says("Created 3 passages"));
    screen.press("drillMade");
    CHECK(screen.fixture.room().screen() == "drill");
    CHECK(screen.fixture.room().drill()->text()->title().contains("bar 44"));
}

TEST_CASE("the curves are saved as shown, in the format of the name; another ending is reported and nothing "
          "written") {
    LogScreen screen;
    const QTemporaryDir scratch;
    LogCurvesItem& curves = screen.curves();
    for (const char* kind : {"svg", "png", "pdf", "csv"}) {
        const QString path = scratch.filePath(QStringLiteral("curves.") + QLatin1String(kind));
        CHECK(curves.save(path).toStdString() == "");
        QFile file(path);
        REQUIRE(file.open(QIODevice::ReadOnly));
        CHECK(file.readAll().size() > 1'000);
    }
    CHECK(curves.save(scratch.filePath("curves.gif")).contains(".svg, .png, .pdf or .csv"));
    CHECK(curves.save(scratch.filePath("none/curves.svg")).contains("cannot be written"));
    CHECK(QDir(scratch.path()).entryList(QDir::Files).size() == 4);
    screen.press("saveCurves");
    for (const QChar letter : scratch.filePath("typed.svg"))
        QTest::keyClick(&screen.fixture.window(), letter.toLatin1());
    keepShot(screen.fixture.shot(), "log-saving");
    screen.key(Qt::Key_Return);
    CHECK(QFile::exists(scratch.filePath("typed.svg")));
    CHECK(screen.says("saved as"));
}
