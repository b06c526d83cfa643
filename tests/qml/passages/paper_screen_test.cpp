// SPDX-License-Identifier: GPL-3.0-or-later
// Practice on paper and passage files, by mouse and keys.
#include "../accessible_walk.h"
#include "../screen_shots.h"

#include <doctest/doctest.h>

#include <QFile>
#include <QTemporaryDir>
#include <QTest>

using namespace piolo;
using piolo::test::ScreenFixture;
using piolo::test::walkAccessibly;

namespace {

struct PaperScreen {
    PaperScreen() {
        fixture.room().setScreen("passages");
        fixture.play(0.1);
    }
    ~PaperScreen() { CHECK(fixture.warnings().join("\n").toStdString() == ""); }

    void press(const char* name) { fixture.click(QString::fromLatin1(name)); }
    /// The control inside it that receives a key.
    QQuickItem* inner(const QString& name, const char* kind) {
        QQuickItem* item = fixture.find(name);
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
        QTest::keyClick(&fixture.window(), Qt::Key_A, Qt::ControlModifier);
        QTest::keyClick(&fixture.window(), Qt::Key_Delete);
        for (const QChar letter : text) QTest::keyClick(&fixture.window(), letter.toLatin1());
        fixture.play(0.05);
    }
    void raise(const QString& stepper, int times) {
        QQuickItem* box = inner(stepper, "QQuickSpinBox");
        REQUIRE(box != nullptr);
        box->forceActiveFocus(Qt::TabFocusReason);
        for (int time = 0; time < times; ++time) QTest::keyClick(&fixture.window(), Qt::Key_Up);
        fixture.play(0.05);
    }
    /// Chooses the view with this name.
    void turnTo(const QString& words) {
        for (QQuickItem* item : fixture.shown())
            if (item->inherits("QQuickRadioButton") && item->property("text") == words) {
                item->forceActiveFocus(Qt::TabFocusReason);
                QTest::keyClick(&fixture.window(), Qt::Key_Space);
                fixture.play(0.05);
                return;
            }
        FAIL("no such side");
    }
    [[nodiscard]] bool shows(const QString& text) {
        for (QQuickItem* item : fixture.shown())
            if (item->inherits("QQuickText") && item->property("text").toString().contains(text)) return true;
        return false;
    }
    void waitForFile() {
        for (int turn = 0; fixture.room().exchange()->reading() && turn < 1000; ++turn) QTest::qWait(10);
        fixture.play(0.05);
    }
    void checkNamed() {
        const auto walk = walkAccessibly(fixture.window());
        CHECK(walk.controls > 4);
        CHECK(walk.nameless.join("\n").toStdString() == "");
    }
    void shoot(const QString& name) {
        test::shootAll(fixture, name);
        fixture.play(0.05);
    }
    [[nodiscard]] const PassageRecord& record() {
        return *fixture.room().book().notebook().passage(fixture.passage());
    }
    [[nodiscard]] QString path(const char* name) const { return scratch.filePath(QString::fromLatin1(name)); }

    QTemporaryDir scratch;
    ScreenFixture fixture;
};

} // namespace

TEST_CASE("a sheet is saved for the selected passage, or for the ticked ones, by keyboard") {
    PaperScreen screen;
    screen.fixture.choose("more", "paper");
    screen.checkNamed();
    CHECK(screen.shows("1 passage on one page"));
    screen.type("sheet-path", screen.path("sheet.pdf"));
    screen.shoot("paper-print");
    QTest::keyClick(&screen.fixture.window(), Qt::Key_Return);
    screen.fixture.play(0.05);
    CHECK(screen.shows("saved as"));
    CHECK(QFile::exists(screen.path("sheet.pdf")));
    screen.press("pickAll");
    CHECK(screen.fixture.room().picks()->picked() == 2);
    screen.type("sheet-path", screen.path("sheet.doc"));
    screen.press("sheet-save");
    CHECK(screen.shows(".pdf, .svg or .png"));
    screen.shoot("paper-print-fault");
    screen.press("paper-back");
    CHECK(screen.fixture.find("passageSheet") != nullptr);
}

TEST_CASE("a sheet is entered by keyboard: its outcome is shown, saved, and taken back") {
    PaperScreen screen;
    const Standing before = screen.record().standing;
    const std::size_t entries = screen.record().entries.size();
    screen.fixture.choose("more", "paper");
    screen.turnTo("Enter a sheet");
    screen.checkNamed();
    screen.shoot("paper-entry-empty");
    screen.raise("clean-0", 2);
    screen.raise("missed-0", 1);
    CHECK(screen.shows("2 clean, 1 missed: see the result above."));
    screen.checkNamed();
    screen.shoot("paper-entry");
    screen.press("paper-keep");
    CHECK(screen.record().entries.size() == entries + 3);
    CHECK(screen.record().entries.back().entered);
    CHECK(screen.shows("3 runs were added to the log."));
    screen.shoot("paper-entry-kept");
    screen.fixture.room().setScreen("log");
    screen.fixture.play(0.1);
    CHECK(screen.shows("on paper"));
    screen.shoot("log-entered");
    screen.fixture.room().setScreen("passages");
    screen.fixture.play(0.1);
    screen.fixture.choose("more", "paper");
    screen.turnTo("Enter a sheet");
    screen.press("paper-take-back");
    CHECK(screen.record().entries.size() == entries);
    CHECK(screen.record().standing.tempo == before.tempo);
}

TEST_CASE(
    "a day before the passage's last is refused with its reason, and a long ladder scrolls with the focus") {
    PaperScreen screen;
    screen.fixture.choose("more", "paper");
    screen.turnTo("Enter a sheet");
    screen.type("paper-lowest", "60");
    screen.raise("clean-0", 1);
    screen.type("paper-day", "2026-04-02");
    CHECK(screen.shows("not before"));
    CHECK_FALSE(screen.fixture.find("paper-keep")->isEnabled());
    screen.shoot("paper-entry-fault");
    QQuickItem* list = screen.fixture.find("paper-ladder");
    REQUIRE(list != nullptr);
    for (int rung = 0; rung < 16; ++rung) {
        const QString name = QStringLiteral("missed-%1").arg(rung);
        screen.raise(name, 1);
        const QPointF place = screen.fixture.window().activeFocusItem()->mapToItem(list, QPointF(0, 0));
        CHECK(place.y() >= -1);
        CHECK(place.y() + 44 <= list->height() + 1);
    }
}

TEST_CASE("passages are written to a file and imported from one, after a review of the changes") {
    PaperScreen screen;
    screen.fixture.choose("more", "files");
    screen.checkNamed();
    screen.type("export-path", screen.path("sectional.piolo.json"));
    screen.shoot("files-write");
    screen.press("export-save");
    CHECK(screen.shows("saved as"));
    Tempi tempi = screen.record().passage.tempi;
    tempi.rule.target = Tempo::bpm(88);
    screen.fixture.room().book().record(PassageFact{screen.fixture.passage(), {}, {}, tempi});
    screen.turnTo("Import");
    screen.shoot("files-take-empty");
    screen.type("import-path", screen.path("sectional.piolo.json"));
    screen.press("import-read");
    screen.waitForFile();
    CHECK(screen.shows("target: 88 → 96"));
    screen.checkNamed();
    screen.shoot("files-take");
    CHECK_FALSE(screen.fixture.find("import-take")->isEnabled());
    screen.press("take-1");
    screen.press("import-take");
    CHECK(screen.record().passage.tempi.rule.target == Tempo::bpm(96));
    CHECK(screen.shows("0 added, 1 replaced from the file, 0 left unchanged."));
    screen.press("import-read");
    screen.waitForFile();
    CHECK(screen.shows("You already have everything in this file: nothing would change."));
    screen.shoot("files-take-same");
}

TEST_CASE("an invalid file is one line under its name") {
    PaperScreen screen;
    screen.fixture.choose("more", "files");
    screen.turnTo("Import");
    screen.type("import-path", screen.path("missing.piolo.json"));
    QTest::keyClick(&screen.fixture.window(), Qt::Key_Return);
    screen.waitForFile();
    CHECK(screen.shows("E301"));
    screen.shoot("files-fault");
    screen.press("files-back");
    CHECK(screen.fixture.find("passageSheet") != nullptr);
}
