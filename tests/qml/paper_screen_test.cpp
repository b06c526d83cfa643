// SPDX-License-Identifier: GPL-3.0-or-later
// Practice on paper and passage files, by mouse and keys.
#include "accessible_walk.h"
#include "screen_shots.h"

#include <doctest/doctest.h>

#include <QFile>
#include <QTemporaryDir>
#include <QTest>

using namespace piolo;
using piolo::test::ScreenFixture;
using piolo::test::walkAccessibly;

namespace {

struct Desk {
    Desk() {
        stage.room().setScreen("passages");
        stage.play(0.1);
    }
    ~Desk() { CHECK(stage.warnings().join("\n").toStdString() == ""); }

    void press(const char* name) { stage.click(QString::fromLatin1(name)); }
    /// The control inside it that receives a key.
    QQuickItem* inner(const QString& name, const char* kind) {
        QQuickItem* item = stage.find(name);
        CAPTURE(name.toStdString());
        REQUIRE(item != nullptr);
        QList<QQuickItem*> open{item};
        while (!open.isEmpty()) {
            QQuickItem* next = open.takeFirst();
            if (next->inherits(kind)) return next;
            open += next->childItems();
        }
        return nullptr;
    }
    void type(const QString& field, const QString& text) {
        QQuickItem* input = inner(field, "QQuickTextField");
        REQUIRE(input != nullptr);
        input->forceActiveFocus(Qt::TabFocusReason);
        QTest::keyClick(&stage.window(), Qt::Key_A, Qt::ControlModifier);
        QTest::keyClick(&stage.window(), Qt::Key_Delete);
        for (const QChar letter : text) QTest::keyClick(&stage.window(), letter.toLatin1());
        stage.play(0.05);
    }
    void raise(const QString& stepper, int times) {
        QQuickItem* box = inner(stepper, "QQuickSpinBox");
        REQUIRE(box != nullptr);
        box->forceActiveFocus(Qt::TabFocusReason);
        for (int time = 0; time < times; ++time) QTest::keyClick(&stage.window(), Qt::Key_Up);
        stage.play(0.05);
    }
    /// Chooses the view with this name.
    void turnTo(const QString& words) {
        for (QQuickItem* item : stage.shown())
            if (item->inherits("QQuickRadioButton") && item->property("text") == words) {
                item->forceActiveFocus(Qt::TabFocusReason);
                QTest::keyClick(&stage.window(), Qt::Key_Space);
                stage.play(0.05);
                return;
            }
        FAIL("no such side");
    }
    [[nodiscard]] bool shows(const QString& text) {
        for (QQuickItem* item : stage.shown())
            if (item->inherits("QQuickText") && item->property("text").toString().contains(text)) return true;
        return false;
    }
    void waitForFile() {
        for (int turn = 0; stage.room().exchange()->reading() && turn < 1000; ++turn) QTest::qWait(10);
        stage.play(0.05);
    }
    void checkNamed() {
        const auto walk = walkAccessibly(stage.window());
        CHECK(walk.controls > 4);
        CHECK(walk.nameless.join("\n").toStdString() == "");
    }
    void shoot(const QString& name) {
        test::shootAll(stage, name);
        stage.play(0.05);
    }
    [[nodiscard]] const PassageRecord& record() {
        return *stage.room().book().notebook().passage(stage.passage());
    }
    [[nodiscard]] QString path(const char* name) const { return scratch.filePath(QString::fromLatin1(name)); }

    QTemporaryDir scratch;
    ScreenFixture stage;
};

} // namespace

TEST_CASE("a sheet is saved for the chosen passage, or for those that are ticked, by keyboard") {
    Desk desk;
    desk.press("onPaper");
    desk.checkNamed();
    CHECK(desk.shows("1 passage on one page"));
    desk.type("sheet-path", desk.path("sheet.pdf"));
    desk.shoot("paper-print");
    QTest::keyClick(&desk.stage.window(), Qt::Key_Return);
    desk.stage.play(0.05);
    CHECK(desk.shows("saved as"));
    CHECK(QFile::exists(desk.path("sheet.pdf")));
    desk.press("pickAll");
    CHECK(desk.stage.room().picks()->picked() == 2);
    desk.type("sheet-path", desk.path("sheet.doc"));
    desk.press("sheet-save");
    CHECK(desk.shows(".pdf, .svg or .png"));
    desk.shoot("paper-print-fault");
    desk.press("paper-back");
    CHECK(desk.stage.find("save") != nullptr);
}

TEST_CASE("a sheet is entered by keyboard: what comes of it is seen, kept, and taken back") {
    Desk desk;
    const Standing before = desk.record().standing;
    const std::size_t entries = desk.record().entries.size();
    desk.press("onPaper");
    desk.turnTo("Enter a sheet");
    desk.checkNamed();
    desk.shoot("paper-entry-empty");
    desk.raise("clean-0", 2);
    desk.raise("missed-0", 1);
    CHECK(desk.shows("2 clean, 1 missed: what comes of it stands above."));
    desk.checkNamed();
    desk.shoot("paper-entry");
    desk.press("paper-keep");
    CHECK(desk.record().entries.size() == entries + 3);
    CHECK(desk.record().entries.back().entered);
    CHECK(desk.shows("3 runs are in the log."));
    desk.shoot("paper-entry-kept");
    desk.stage.room().setScreen("log");
    desk.stage.play(0.1);
    CHECK(desk.shows("on paper"));
    desk.shoot("log-entered");
    desk.stage.room().setScreen("passages");
    desk.stage.play(0.1);
    desk.press("onPaper");
    desk.turnTo("Enter a sheet");
    desk.press("paper-take-back");
    CHECK(desk.record().entries.size() == entries);
    CHECK(desk.record().standing.tempo == before.tempo);
}

TEST_CASE(
    "a day before the passage's last is refused with its reason, and a long ladder scrolls with the focus") {
    Desk desk;
    desk.press("onPaper");
    desk.turnTo("Enter a sheet");
    desk.type("paper-lowest", "60");
    desk.raise("clean-0", 1);
    desk.type("paper-day", "2026-04-02");
    CHECK(desk.shows("not before"));
    CHECK_FALSE(desk.stage.find("paper-keep")->isEnabled());
    desk.shoot("paper-entry-fault");
    QQuickItem* list = desk.stage.find("paper-ladder");
    REQUIRE(list != nullptr);
    for (int rung = 0; rung < 16; ++rung) {
        const QString name = QStringLiteral("missed-%1").arg(rung);
        desk.raise(name, 1);
        const QPointF place = desk.stage.window().activeFocusItem()->mapToItem(list, QPointF(0, 0));
        CHECK(place.y() >= -1);
        CHECK(place.y() + 44 <= list->height() + 1);
    }
}

TEST_CASE("passages are written into a file and taken from one, after a look at what would change") {
    Desk desk;
    desk.press("passageFiles");
    desk.checkNamed();
    desk.type("export-path", desk.path("sectional.piolo.json"));
    desk.shoot("files-write");
    desk.press("export-save");
    CHECK(desk.shows("saved as"));
    Tempi tempi = desk.record().passage.tempi;
    tempi.rule.target = Tempo::bpm(88);
    desk.stage.room().book().record(PassageFact{desk.stage.passage(), {}, {}, tempi});
    desk.turnTo("Take from a file");
    desk.shoot("files-take-empty");
    desk.type("import-path", desk.path("sectional.piolo.json"));
    desk.press("import-read");
    desk.waitForFile();
    CHECK(desk.shows("target: 88 → 96"));
    desk.checkNamed();
    desk.shoot("files-take");
    CHECK_FALSE(desk.stage.find("import-take")->isEnabled());
    desk.press("take-1");
    desk.press("import-take");
    CHECK(desk.record().passage.tempi.rule.target == Tempo::bpm(96));
    CHECK(desk.shows("0 added, 1 as in the file now, 0 left as they were."));
    desk.press("import-read");
    desk.waitForFile();
    CHECK(desk.shows("Everything in this file is here already: nothing would change."));
    desk.shoot("files-take-same");
}

TEST_CASE("a file that is none is one line under its name") {
    Desk desk;
    desk.press("passageFiles");
    desk.turnTo("Take from a file");
    desk.type("import-path", desk.path("missing.piolo.json"));
    QTest::keyClick(&desk.stage.window(), Qt::Key_Return);
    desk.waitForFile();
    CHECK(desk.shows("E301"));
    desk.shoot("files-fault");
    desk.press("files-back");
    CHECK(desk.stage.find("save") != nullptr);
}
