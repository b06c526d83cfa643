// SPDX-License-Identifier: GPL-3.0-or-later
// The passages' screens by mouse and keys: input is checked, kept, saved, and can be undone.
#include "screen_shots.h"

#include <doctest/doctest.h>

#include <QTest>

using namespace piolo;
using piolo::test::ScreenFixture;

namespace {

QQuickItem* inputOf(QQuickItem* item) {
    if (item->inherits("QQuickTextField")) return item;
    for (QQuickItem* child : item->childItems())
        if (QQuickItem* found = inputOf(child)) return found;
    return nullptr;
}

/// Replaces the text of that field by typing, as a player would.
void type(ScreenFixture& stage, const char* field, const QString& text) {
    QQuickItem* item = stage.find(QStringLiteral("field-") + QLatin1String(field));
    CAPTURE(std::string(field));
    REQUIRE(item != nullptr);
    QQuickItem* input = inputOf(item);
    REQUIRE(input != nullptr);
    input->forceActiveFocus(Qt::TabFocusReason);
    QTest::keyClick(&stage.window(), Qt::Key_A, Qt::ControlModifier);
    QTest::keyClick(&stage.window(), Qt::Key_Delete);
    for (const QChar letter : text) QTest::keyClick(&stage.window(), letter.toLatin1());
    stage.play(0.05);
}

QStringList textsShown(const ScreenFixture& stage) {
    QStringList texts;
    for (QQuickItem* item : stage.shown())
        if (item->inherits("QQuickText")) texts << item->property("text").toString();
    return texts;
}

bool enabled(const ScreenFixture& stage, const char* name) {
    QQuickItem* item = stage.find(QString::fromLatin1(name));
    return item != nullptr && item->isEnabled();
}

struct Passages {
    explicit Passages(bool emptyFolder = false) : stage(emptyFolder) {
        stage.room().setScreen("passages");
        stage.play(0.1);
    }
    ~Passages() { CHECK(stage.warnings().join("\n").toStdString() == ""); }
    [[nodiscard]] models::PassageEditor& editor() { return *stage.room().editor(); }
    [[nodiscard]] const PassageRecord& record(Id id) { return *stage.room().book().notebook().passage(id); }
    ScreenFixture stage;
};

} // namespace

TEST_CASE("a fault is reported at its field while typing, and the passage cannot be saved meanwhile") {
    Passages screen;
    type(screen.stage, "firstBar", "x9");
    CHECK(textsShown(screen.stage).contains("▲ a whole number from 0 to 9999"));
    CHECK(textsShown(screen.stage).contains("not saved yet"));
    CHECK(!enabled(screen.stage, "save"));
    CHECK(!enabled(screen.stage, "drillIt"));
    test::shootAll(screen.stage, "passages-fault");
    type(screen.stage, "firstBar", "43");
    CHECK(enabled(screen.stage, "save"));
    screen.stage.click("save");
    CHECK(screen.record(screen.stage.passage()).passage.music.firstBar == 43);
    CHECK(!textsShown(screen.stage).contains("not saved yet"));
}

TEST_CASE("a new passage is typed and drilled at once") {
    Passages screen;
    screen.stage.click("newPassage");
    type(screen.stage, "title", "coda");
    type(screen.stage, "target", "132");
    screen.stage.click("drillIt");
    CHECK(screen.stage.room().screen() == "drill");
    CHECK(screen.stage.room().drill()->text()->title().contains("coda"));
    CHECK(screen.stage.room().passages()->total() == 3);
}

TEST_CASE("a removal can be taken back on the spot") {
    Passages screen;
    screen.stage.click("remove");
    CHECK(screen.record(screen.stage.passage()).removed);
    CHECK(screen.stage.room().passages()->count() == 1);
    test::shootAll(screen.stage, "passages-removed");
    screen.stage.click("takeBack");
    CHECK(!screen.record(screen.stage.passage()).removed);
    CHECK(screen.stage.find("takeBack") == nullptr);
}

TEST_CASE("the suggestion for a long run is accepted with its button") {
    Passages screen;
    type(screen.stage, "bars", "8");
    QQuickItem* button = screen.stage.find("takeProposal");
    REQUIRE(button != nullptr);
    button->forceActiveFocus(Qt::TabFocusReason);
    QTest::keyClick(&screen.stage.window(), Qt::Key_Space);
    CHECK(screen.editor().draft().value("cleanRuns") == "3");
}

TEST_CASE("the click's settings are folded, and changed by keyboard") {
    Passages screen;
    const auto tap = [&](const char* name) {
        QQuickItem* item = screen.stage.find(QString::fromLatin1(name));
        CAPTURE(std::string(name));
        REQUIRE(item != nullptr);
        item->forceActiveFocus(Qt::TabFocusReason);
        QTest::keyClick(&screen.stage.window(), Qt::Key_Space);
        screen.stage.play(0.05);
    };
    CHECK(screen.stage.find("field-swing") == nullptr);
    tap("clickOpen");
    type(screen.stage, "barsOff", "1");
    type(screen.stage, "breaths", "43, 44:3");
    tap("accent-1");
    CHECK(textsShown(screen.stage)
              .contains("Click: custom accents · alternating: 1 bars with the click, 1 without · waits for "
                        "breath at 2 places"));
    test::shootAll(screen.stage, "passages-click");
    type(screen.stage, "swing", "4:1");
    CHECK(textsShown(screen.stage).contains("▲ a ratio from 1:1 to 3:1, such as 2:1 or 3:2"));
    type(screen.stage, "swing", "");
    screen.stage.click("save");
    const ClickPattern& click = screen.record(screen.stage.passage()).passage.click;
    CHECK(click.accents == std::vector<Accent>{Accent::strong, Accent::silent});
    CHECK(click.barsOff == 1);
    CHECK(click.breaths == std::vector<BreathPlace>{{43, 1, 1}, {44, 3, 1}});
}

TEST_CASE("long names, many clean runs and an empty search have a picture") {
    Passages screen;
    models::PassageEditor& editor = screen.editor();
    editor.startNew();
    editor.set("title", "The very long transition between the second and the third movement, second ending");
    editor.set("cleanRuns", "40");
    editor.set("bars", "16");
    editor.setPieceChoice("new");
    editor.piece()->setName("Concert piece with an uncommonly long name for a spring evening by the river");
    REQUIRE(!editor.save().isEmpty());
    test::shootAll(screen.stage, "passages-long");
    screen.stage.room().passages()->setSearch("nothing has this name");
    test::shootAll(screen.stage, "passages-not-found");
}

TEST_CASE("an empty folder's list says where the first passage is made") {
    Passages screen(true);
    CHECK(
        textsShown(screen.stage).contains("No passages yet. Create your first with the form on the right."));
    test::shootAll(screen.stage, "passages-empty");
}

TEST_CASE("the first start: a name, a target, Return, and the drill opens") {
    ScreenFixture stage(true);
    REQUIRE(stage.room().screen() == "welcome");
    stage.play(0.1);
    for (const char letter : std::string("coda")) QTest::keyClick(&stage.window(), letter);
    type(stage, "target", "104");
    QTest::keyClick(&stage.window(), Qt::Key_Return);
    stage.play(0.1);
    CHECK(stage.room().screen() == "drill");
    CHECK(stage.room().drill()->text()->title().contains("coda"));
    CHECK(stage.room().settings()->welcomed());
    CHECK(stage.warnings().join("\n").toStdString() == "");
}

TEST_CASE("the first start shows the cautions in plain words") {
    ScreenFixture stage(true);
    const QString all = textsShown(stage).join('\n');
    CHECK(all.contains("If you feel pain, tingling or numbness, stop and see a professional"));
    CHECK(all.contains("Increase your minutes gradually"));
    CHECK(all.contains("Rest your lip and your ears"));
    CHECK(!all.contains("dB"));
}

TEST_CASE("the pages scroll by keyboard, and the focus is never out of sight") {
    ScreenFixture stage;
    stage.resize(1024, 640);
    stage.room().setScreen("settings");
    stage.play(0.1);
    int stops = 0;
    for (int tab = 0; tab < 60; ++tab) {
        QTest::keyClick(&stage.window(), Qt::Key_Tab);
        QQuickItem* item = stage.window().activeFocusItem();
        if (item == nullptr || item->height() > 200) continue;
        ++stops;
        const QPointF top = item->mapToScene({0, 0});
        CAPTURE(item->objectName().toStdString());
        CHECK(top.y() >= 0);
        CHECK(top.y() + item->height() <= 641);
    }
    CHECK(stops > 20);
    test::shootAll(stage, "settings-end");
}
