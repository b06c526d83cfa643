// SPDX-License-Identifier: GPL-3.0-or-later
// The passages' screens by mouse and keys: input is checked, kept, saved, and can be undone.
#include "../screen_shots.h"

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
void type(ScreenFixture& fixture, const char* field, const QString& text) {
    QQuickItem* item = fixture.find(QStringLiteral("field-") + QLatin1String(field));
    CAPTURE(std::string(field));
    REQUIRE(item != nullptr);
    QQuickItem* input = inputOf(item);
    REQUIRE(input != nullptr);
    input->forceActiveFocus(Qt::TabFocusReason);
    QTest::keyClick(&fixture.window(), Qt::Key_A, Qt::ControlModifier);
    QTest::keyClick(&fixture.window(), Qt::Key_Delete);
    for (const QChar letter : text) QTest::keyClick(&fixture.window(), letter.toLatin1());
    fixture.play(0.05);
}

QStringList textsShown(const ScreenFixture& fixture) {
    QStringList texts;
    for (QQuickItem* item : fixture.shown())
        if (item->inherits("QQuickText")) texts << item->property("text").toString();
    return texts;
}

bool enabled(const ScreenFixture& fixture, const char* name) {
    QQuickItem* item = fixture.find(QString::fromLatin1(name));
    return item != nullptr && item->isEnabled();
}

struct Passages {
    explicit Passages(bool emptyFolder = false) : fixture(emptyFolder) {
        fixture.room().setScreen("passages");
        fixture.play(0.1);
    }
    /// Opens the form of the chosen passage.
    void edit() { fixture.click("edit"); }
    ~Passages() { CHECK(fixture.warnings().join("\n").toStdString() == ""); }
    [[nodiscard]] models::PassageEditor& editor() { return *fixture.room().editor(); }
    [[nodiscard]] const PassageRecord& record(Id id) { return *fixture.room().book().notebook().passage(id); }
    ScreenFixture fixture;
};

} // namespace

TEST_CASE("a fault is reported at its field while typing, and the passage cannot be saved meanwhile") {
    Passages screen;
    screen.edit();
    type(screen.fixture, "firstBar", "x9");
    CHECK(textsShown(screen.fixture).contains("▲ a whole number from 0 to 9999"));
    CHECK(textsShown(screen.fixture).contains("not saved yet"));
    CHECK(!enabled(screen.fixture, "save"));
    CHECK(!enabled(screen.fixture, "drillIt"));
    test::shootAll(screen.fixture, "passages-fault");
    type(screen.fixture, "firstBar", "43");
    CHECK(enabled(screen.fixture, "save"));
    screen.fixture.click("save");
    CHECK(screen.record(screen.fixture.passage()).passage.music.firstBar == 43);
    CHECK(!textsShown(screen.fixture).contains("not saved yet"));
    CHECK(screen.fixture.find("passageSheet") != nullptr);
}

TEST_CASE("a new passage is typed and drilled at once") {
    Passages screen;
    screen.fixture.click("newPassage");
    type(screen.fixture, "title", "coda");
    type(screen.fixture, "target", "132");
    screen.fixture.click("drillIt");
    CHECK(screen.fixture.room().screen() == "drill");
    CHECK(screen.fixture.room().drill()->text()->title().contains("coda"));
    CHECK(screen.fixture.room().passages()->total() == 3);
}

TEST_CASE("a removal can be taken back on the spot") {
    Passages screen;
    screen.edit();
    screen.fixture.click("remove");
    CHECK(screen.record(screen.fixture.passage()).removed);
    CHECK(screen.fixture.room().passages()->count() == 1);
    test::shootAll(screen.fixture, "passages-removed");
    screen.fixture.click("restore");
    CHECK(!screen.record(screen.fixture.passage()).removed);
    CHECK(screen.fixture.find("restore") == nullptr);
    CHECK(screen.fixture.room().passages()->count() == 2);
}

TEST_CASE("the suggestion for a long run is accepted with its button") {
    Passages screen;
    screen.edit();
    type(screen.fixture, "bars", "8");
    QQuickItem* button = screen.fixture.find("takeProposal");
    REQUIRE(button != nullptr);
    button->forceActiveFocus(Qt::TabFocusReason);
    QTest::keyClick(&screen.fixture.window(), Qt::Key_Space);
    CHECK(screen.editor().draft().value("cleanRuns") == "3");
}

TEST_CASE("the click's settings are folded, and changed by keyboard") {
    Passages screen;
    screen.edit();
    const auto tap = [&](const char* name) {
        QQuickItem* item = screen.fixture.find(QString::fromLatin1(name));
        CAPTURE(std::string(name));
        REQUIRE(item != nullptr);
        item->forceActiveFocus(Qt::TabFocusReason);
        QTest::keyClick(&screen.fixture.window(), Qt::Key_Space);
        screen.fixture.play(0.05);
    };
    CHECK(screen.fixture.find("field-swing") == nullptr);
    tap("clickOpen");
    type(screen.fixture, "barsOff", "1");
    type(screen.fixture, "breaths", "43, 44:3");
    tap("accent-1");
    CHECK(textsShown(screen.fixture)
              .contains("Click: custom accents · alternating: 1 bars with the click, 1 without · waits for "
                        "breath at 2 places"));
    test::shootAll(screen.fixture, "passages-click");
    type(screen.fixture, "swing", "4:1");
    CHECK(textsShown(screen.fixture).contains("▲ a ratio from 1:1 to 3:1, such as 2:1 or 3:2"));
    type(screen.fixture, "swing", "");
    screen.fixture.click("save");
    const ClickPattern& click = screen.record(screen.fixture.passage()).passage.click;
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
    test::shootAll(screen.fixture, "passages-long");
    screen.fixture.room().passages()->setSearch("nothing has this name");
    test::shootAll(screen.fixture, "passages-not-found");
}

TEST_CASE("an empty folder's list says where the first passage is made") {
    Passages screen(true);
    CHECK(textsShown(screen.fixture)
              .contains("No passages yet. Create your first with the form on the right."));
    test::shootAll(screen.fixture, "passages-empty");
}

TEST_CASE("the first start: a name, a target, Return, and the drill opens") {
    ScreenFixture fixture(true);
    REQUIRE(fixture.room().screen() == "welcome");
    fixture.play(0.1);
    for (const char letter : std::string("coda")) QTest::keyClick(&fixture.window(), letter);
    type(fixture, "target", "104");
    QTest::keyClick(&fixture.window(), Qt::Key_Return);
    fixture.play(0.1);
    CHECK(fixture.room().screen() == "drill");
    CHECK(fixture.room().drill()->text()->title().contains("coda"));
    CHECK(fixture.room().settings()->welcomed());
    CHECK(fixture.warnings().join("\n").toStdString() == "");
}

TEST_CASE("the first start shows the cautions in plain words") {
    ScreenFixture fixture(true);
    const QString all = textsShown(fixture).join('\n');
    CHECK(all.contains("If you feel pain, tingling or numbness, stop and see a professional"));
    CHECK(all.contains("Increase your minutes gradually"));
    CHECK(all.contains("Rest your lip and your ears"));
    CHECK(!all.contains("dB"));
}

TEST_CASE("the pages scroll by keyboard, and the focus is never out of sight") {
    ScreenFixture fixture;
    fixture.resize(1024, 640);
    fixture.room().setScreen("settings");
    fixture.play(0.1);
    int stops = 0;
    for (int tab = 0; tab < 60; ++tab) {
        QTest::keyClick(&fixture.window(), Qt::Key_Tab);
        QQuickItem* item = fixture.window().activeFocusItem();
        if (item == nullptr || item->height() > 200) continue;
        ++stops;
        const QPointF top = item->mapToScene({0, 0});
        CAPTURE(item->objectName().toStdString());
        CHECK(top.y() >= 0);
        CHECK(top.y() + item->height() <= 641);
    }
    CHECK(stops > 20);
    test::shootAll(fixture, "settings-end");
}

namespace {

/// The headings of the list and the titles below them, from top to bottom.
QStringList listed(ScreenFixture& fixture) {
    fixture.play(0.1);
    (void)fixture.shot();
    QQuickItem* const list = fixture.find("passageList");
    REQUIRE(list != nullptr);
    QMap<int, QString> byPlace;
    for (QQuickItem* item : fixture.shown()) {
        const bool heading = item->property("section").isValid() && !item->property("passageId").isValid() &&
                             item->inherits("QQuickItem") && item->parentItem() != nullptr &&
                             item->parentItem()->parentItem() == list;
        const int place = qRound(item->mapToItem(list, {0, 0}).y());
        if (item->property("passageId").isValid())
            byPlace[place] = "  " + item->property("title").toString();
        else if (heading)
            byPlace[place] = item->childItems().constFirst()->property("text").toString();
    }
    return byPlace.values();
}

} // namespace

TEST_CASE("every passage is below the heading of its piece, whatever was removed, restored or renamed") {
    ScreenFixture fixture;
    fixture.open("passages");
    auto& book = fixture.room().book();
    const auto passage = [&](const char* title, Id piece) {
        Passage made;
        const Id id = book.newId();
        book.record(PassageFact{id, Title{title, piece}, made.music, made.tempi});
        return id;
    };
    const auto matches = [&] {
        const QStringList shown = listed(fixture);
        const models::PassageListModel& model = *fixture.room().passages();
        QStringList wanted;
        QString before = QStringLiteral("none");
        for (int row = 0; row < model.rowCount(); ++row) {
            const auto at = [&](auto role) { return model.data(model.index(row), role).toString(); };
            const QString section = at(models::PassageListModel::Section);
            if (section != before) wanted << model.sectionTitle(section);
            before = section;
            wanted << "  " + at(models::PassageListModel::Title);
        }
        CAPTURE(shown.join("\n").toStdString());
        CHECK(shown.join("\n").toStdString() == wanted.join("\n").toStdString());
    };
    matches();
    const Id march = book.newId();
    book.record(PieceFact{march, "March Home", "Clarinet in B♭", Date{2026, 5, 2}});
    const Id trio = passage("trio", march);
    matches();
    const Id air = book.newId();
    book.record(PieceFact{air, "Evening Air", "Clarinet in B♭", Date{2026, 5, 3}});
    passage("opening", air);
    passage("exercise", Id{});
    matches();
    book.record(RemovalFact{trio, true});
    matches();
    fixture.room().passages()->setRemovedToo(true);
    matches();
    fixture.room().passages()->setRemovedToo(false);
    matches();
    book.record(PieceFact{air, "Evening Air, revised", "Clarinet in B♭", Date{2026, 5, 1}});
    matches();
    fixture.room().passages()->setSearch("e");
    matches();
    fixture.room().passages()->setSearch("");
    matches();
}
