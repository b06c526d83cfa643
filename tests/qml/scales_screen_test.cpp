// SPDX-License-Identifier: GPL-3.0-or-later
// The screen of scales by keys, mouse and touch, in every size: finding the instrument, the grid, the way to
// the drill and back.
#include "screen_shots.h"

#include <doctest/doctest.h>

#include <QTest>

using namespace piolo;
using piolo::test::keepShot;
using piolo::test::ScreenFixture;

namespace {

struct Scales : ScreenFixture {
    explicit Scales(bool emptyFolder = false) : ScreenFixture(emptyFolder) {}
    ~Scales() { CHECK(warnings().join("\n").toStdString() == ""); }

    [[nodiscard]] models::ScaleBoard& board() { return *room().scales(); }
    [[nodiscard]] std::string instrument() { return board().choices()->instrument().toStdString(); }
    void show() {
        room().setScreen("scales");
        play(0.1);
    }
    void showGrid() {
        board().choices()->setInstrument("alto saxophone");
        show();
    }
    void type(const char* letters) {
        for (const char* letter = letters; *letter != 0; ++letter) QTest::keyClick(&window(), *letter);
        play(0.05);
    }
    void key(Qt::Key key, int times = 1) {
        for (int time = 0; time < times; ++time) QTest::keyClick(&window(), key);
        play(0.05);
    }
    [[nodiscard]] bool isAtGrid() { return find("scaleGrid") != nullptr; }
    /// The part of the item that is in sight.
    [[nodiscard]] QRectF inSight(const QString& name) {
        const QQuickItem* item = find(name);
        if (item == nullptr) return {};
        QRectF seen = item->mapRectToScene({0, 0, item->width(), item->height()});
        for (const QQuickItem* up = item->parentItem(); up != nullptr; up = up->parentItem())
            if (up->clip() || up->parentItem() == nullptr)
                seen &= up->mapRectToScene({0, 0, up->width(), up->height()});
        return seen & QRectF(0, 0, window().width(), window().height());
    }
    [[nodiscard]] bool isWhole(const QString& name) {
        const QQuickItem* item = find(name);
        const QRectF seen = inSight(name);
        return item != nullptr && seen.width() > item->width() - 1 && seen.height() > item->height() - 1;
    }
};

struct FirstScales : Scales {
    FirstScales() : Scales(true) { show(); }
};

const std::vector<QSize> sizes{{480, 640}, {600, 960}, {1024, 640}, {1280, 800}, {1920, 1080}, {3840, 2160}};

} // namespace

TEST_CASE_FIXTURE(Scales,
                  "a cell is at least 44 points wide and high, and the way to the drill is in sight") {
    showGrid();
    for (const QSize size : sizes) {
        CAPTURE(size.width());
        resize(size.width(), size.height());
        play(0.1);
        for (const char* cell : {"cell-0-0", "cell-6-11"}) {
            REQUIRE(find(cell) != nullptr);
            CHECK(find(cell)->width() >= 44);
            CHECK(find(cell)->height() >= 44);
        }
        CHECK(isWhole("drillScale"));
        CHECK(isWhole("hearScale"));
        CHECK(isWhole("scaleSides"));
        CHECK(find("scaleStaff") != nullptr);
        if (const QQuickItem* staff = find("scaleStaff")) CHECK(staff->property("shown").toInt() >= 1);
        keepShot(shot(), QStringLiteral("scales-%1x%2").arg(size.width()).arg(size.height()));
    }
}

TEST_CASE_FIXTURE(Scales,
                  "the selected cell stays in sight as the arrow keys move, whichever way the keys lie") {
    showGrid();
    for (const QSize size : sizes) {
        CAPTURE(size.width());
        resize(size.width(), size.height());
        board().choose(0, 0);
        play(0.1);
        const bool upright = find("cell-0-1")->y() > find("cell-0-0")->y();
        CHECK(upright == (size.width() < 700));
        find("scaleGrid")->forceActiveFocus(Qt::TabFocusReason);
        key(upright ? Qt::Key_Right : Qt::Key_Down, 6);
        CHECK(board().row() == 6);
        CHECK(isWhole(QStringLiteral("cell-6-0")));
        key(upright ? Qt::Key_Down : Qt::Key_Right, 11);
        CHECK(board().column() == 11);
        CHECK(isWhole(QStringLiteral("cell-6-11")));
    }
}

TEST_CASE_FIXTURE(FirstScales,
                  "the instrument is found by typing any part of its name, and Return shows its grid") {
    CHECK(find("proposedInstrument") == nullptr);
    CHECK(find("instrument-tuba") != nullptr); // all of them are there
    type("alto");
    CHECK(find("instrument-tuba") == nullptr);
    key(Qt::Key_Return);
    CHECK(instrument() == "alto saxophone");
    CHECK(isAtGrid());
    CHECK(find("scaleGrid")->hasActiveFocus());
}

TEST_CASE_FIXTURE(FirstScales, "the arrow keys move among the instruments that were found") {
    type("sax");
    key(Qt::Key_Down, 2);
    key(Qt::Key_Up);
    key(Qt::Key_Return);
    CHECK(instrument() == "alto saxophone");
    click("scaleSides-instrument");
    key(Qt::Key_Tab); // to the list
    key(Qt::Key_Right);
    key(Qt::Key_Space);
    CHECK(instrument() == "tenor saxophone");
    CHECK_FALSE(isAtGrid()); // only the first choice leads there by itself
    press("toGrid");
    CHECK(isAtGrid());
}

TEST_CASE_FIXTURE(FirstScales, "a touch chooses an instrument in the narrowest window, too") {
    resize(480, 640);
    play(0.1);
    type("horn");
    touch(middleOf("instrument-flugelhorn"));
    CHECK(instrument() == "flugelhorn");
    CHECK(isAtGrid());
    click("scaleSides-instrument");
    QQuickItem* const tuba = find("instrument-tuba");
    REQUIRE(tuba != nullptr);
    find("instruments")->forceActiveFocus(Qt::TabFocusReason);
    key(Qt::Key_Down, 30); // the list scrolls with the keys
    CHECK(isWhole("instrument-tuba"));
    click("instrument-tuba");
    CHECK(instrument() == "tuba");
}

TEST_CASE_FIXTURE(Scales, "the piece's own instrument is proposed, and one key takes it") {
    show();
    REQUIRE(find("proposedInstrument") != nullptr);
    CHECK(find("proposedInstrument")->property("text").toString() == "clarinet in B flat");
    CHECK(find("proposedInstrument")->property("key").toString() == "as in “River Suite”");
    CHECK(find("proposedInstrument")->hasActiveFocus());
    keepShot(shot(), QStringLiteral("scales-proposed"));
    key(Qt::Key_Return);
    CHECK(instrument() == "clarinet in B flat");
    CHECK(isAtGrid());
    click("scaleSides-instrument");
    CHECK(find("proposedInstrument") == nullptr);
}

TEST_CASE_FIXTURE(Scales, "what a cell's figures mean is said in words below the grid") {
    showGrid();
    CHECK(find("cellText") == nullptr); // nothing was played
    board().choose(1, 2);
    RunFact run;
    run.passage = Id::parse(board().passageToDrill().toStdString()).value();
    run.tempo = Tempo::bpm(60);
    run.mark = Mark::clean;
    for (int count = 0; count < 6; ++count) room().book().record(run);
    play(0.05);
    REQUIRE(find("cellText") != nullptr);
    CHECK(find("cellText")->property("text").toString() == "Best 60, 1 of 5 clean in a row, played today.");
    click("cell-0-0");
    CHECK(find("cellText") == nullptr);
    touch(middleOf("cell-1-2"));
    CHECK(find("cellText") != nullptr);
}

TEST_CASE_FIXTURE(Scales,
                  "from the drill of a scale one key leads to the next scale, and the way back to the grid") {
    showGrid();
    press("drillScale");
    REQUIRE(room().screen() == "drill");
    CHECK(find("nextPassage")->property("text").toString() == "Next scale");
    CHECK(find("wayBack")->property("text").toString() == "Grid");
    click("wayBack");
    CHECK(room().screen() == "scales");
    CHECK(isAtGrid());
    open("drill");
    CHECK(find("nextPassage")->property("text").toString() == "Next passage");
}
