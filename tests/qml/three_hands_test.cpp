// SPDX-License-Identifier: GPL-3.0-or-later
// A first day from the empty folder on, three times: with keys alone, with the mouse alone, and with one
// finger; in each shape of window and each language.
#include "models/settings/language_table.h"
#include "screen_fixture.h"
#include "spoken_language.h"

#include <doctest/doctest.h>

#include <QTest>

using namespace piolo;
using piolo::models::DrillModel;
using piolo::test::ScreenFixture;
using piolo::test::Spoken;

namespace {

enum class Hand { keys, mouse, finger };

/// What a player does, with that hand only.
class Novice : public ScreenFixture {
public:
    explicit Novice(Hand hand) : ScreenFixture(true), hand_(hand) {}

    void press(const QString& name) {
        CAPTURE(name.toStdString());
        QQuickItem* const item = find(name);
        REQUIRE(item != nullptr);
        const QPoint middle = middleOf(name);
        REQUIRE(QRect(QPoint(0, 0), window().size()).contains(middle));
        if (hand_ == Hand::keys) {
            REQUIRE(tabTo(*item));
            key(Qt::Key_Space);
        } else if (hand_ == Hand::mouse) {
            ++presses_;
            QTest::mouseClick(&window(), Qt::LeftButton, Qt::NoModifier, middle);
        } else {
            ++presses_;
            touch(middle);
        }
        play(0.3);
    }
    void key(int key) {
        ++presses_;
        tap(key);
        play(0.3);
    }
    /// All keys, clicks and touches so far.
    [[nodiscard]] int presses() const { return presses_; }
    [[nodiscard]] Hand hand() const { return hand_; }
    /// The one thing that is done without looking: anywhere, or with the key.
    void mark() {
        if (hand_ == Hand::keys)
            tap(Qt::Key_Space);
        else if (hand_ == Hand::mouse)
            QTest::mouseClick(&window(), Qt::LeftButton, Qt::NoModifier, {20, window().height() / 2});
        else
            touch({window().width() / 3, window().height() - 40});
        play(0.3);
    }
    void atTheDrill(const char* button, Qt::Key key) {
        if (hand_ == Hand::keys)
            this->key(key);
        else
            press(QString::fromLatin1(button));
        play(0.3);
    }
    /// By its name, which is the same in all languages, or from the list.
    void chooseTheOboe() {
        if (hand_ != Hand::keys) return press(QStringLiteral("instrument-oboe"));
        REQUIRE(tabTo(*find("instrumentSearch")));
        for (const char letter : {'o', 'b', 'o', 'e'}) QTest::keyClick(&window(), letter);
        QTest::keyClick(&window(), Qt::Key_Return);
        play(0.3);
    }
    [[nodiscard]] DrillModel& drill() { return *room().drill(); }
    [[nodiscard]] const PassageRecord& record() {
        return *room().book().notebook().passage(room().book().notebook().passages().front());
    }
    [[nodiscard]] int missed() {
        int count = 0;
        for (const Entry& entry : record().entries) count += entry.mark == Mark::missed ? 1 : 0;
        return count;
    }

private:
    /// With the Tab key, and inside the navigation with the arrow keys.
    bool tabTo(const QQuickItem& item) {
        constexpr int most = 100;
        const bool tab = item.objectName().startsWith("tab-");
        const auto there = [&] {
            return item.hasActiveFocus() || item.isAncestorOf(window().activeFocusItem());
        };
        for (int press = 0; press < most && !there(); ++press) {
            const QQuickItem* const here = window().activeFocusItem();
            const bool inTabs = here != nullptr && here->objectName().startsWith("tab-");
            ++presses_;
            QTest::keyClick(&window(), tab && inTabs ? Qt::Key_Right : Qt::Key_Tab);
        }
        return there();
    }

    Hand hand_;
    int presses_ = 0;
};

/// With nothing defined, and not logged.
void justAClick(Novice& novice) {
    REQUIRE(novice.room().screen() == "welcome");
    novice.press("justAClick");
    REQUIRE(novice.room().screen() == "click");
    novice.atTheDrill("clickStart", Qt::Key_Space);
    novice.play(1);
    CHECK(novice.room().click()->sounds());
    novice.press("clickUp1");
    novice.press("tab-log");
    REQUIRE(novice.room().screen() == "log");
    CHECK(novice.room().click()->sounds());
    novice.press("now");
    REQUIRE(novice.room().screen() == "click");
    novice.atTheDrill("clickStart", Qt::Key_Space);
    CHECK_FALSE(novice.room().click()->sounds());
    CHECK(novice.room().book().notebook().factCount() == 0);
    novice.press("tab-passages");
}

void firstPassage(Novice& novice) {
    REQUIRE(novice.room().screen() == "welcome");
    if (novice.find("begin") == nullptr || novice.middleOf("begin").y() >= novice.window().height())
        QTest::keyClick(&novice.window(), Qt::Key_Return); // below the edge: the field's own key
    else
        novice.press("begin");
    novice.play(0.1);
    REQUIRE(novice.room().screen() == "drill");
}

void drill(Novice& novice) {
    novice.atTheDrill("start", Qt::Key_Space);
    novice.play(12); // past the count-in
    REQUIRE(novice.drill().state() == DrillModel::State::Playing);
    novice.mark();
    CHECK(novice.missed() == 1);
    novice.atTheDrill("playingBack", Qt::Key_Backspace);
    CHECK(novice.missed() == 0);
    novice.play(12);
    novice.mark();
    CHECK(novice.missed() == 1);
    novice.atTheDrill("stop", Qt::Key_Escape);
    CHECK(novice.drill().state() == DrillModel::State::Stopped);
    novice.press("howToPlay");
    CHECK(novice.find("howToPlayPanel") != nullptr);
    novice.press("howToPlayClose");
    CHECK(novice.find("howToPlayPanel") == nullptr);
    novice.press("sitting");
    CHECK(novice.room().screen() == "log");
}

void passagePage(Novice& novice) {
    novice.press("tab-passages");
    if (novice.find("passageSheet") == nullptr) novice.press("passageLine");
    REQUIRE(novice.find("passageSheet") != nullptr);
    novice.press("edit");
    REQUIRE(novice.find("save") != nullptr);
    novice.press("revert");
    REQUIRE(novice.find("passageSheet") != nullptr);
    novice.press("drillIt");
    REQUIRE(novice.room().screen() == "drill");
    novice.press("wayBack");
    CHECK(novice.room().screen() == "passages");
}

void firstScale(Novice& novice) {
    novice.press("tab-scales");
    novice.chooseTheOboe();
    if (novice.find("toGrid") != nullptr) novice.press("toGrid");
    REQUIRE(novice.find("cell-0-0") != nullptr);
    novice.press("drillScale");
    REQUIRE(novice.room().screen() == "drill");
    novice.atTheDrill("start", Qt::Key_Space);
    novice.play(3);
    CHECK(novice.drill().state() == DrillModel::State::Playing);
    novice.atTheDrill("stop", Qt::Key_Escape);
    novice.press("wayBack");
    CHECK(novice.room().screen() == "scales");
}

void everyScreen(Novice& novice) {
    for (const auto* tab : {"tab-scales", "tab-log", "tab-settings", "tab-help", "tab-passages"}) {
        novice.press(QString::fromLatin1(tab));
        CHECK("tab-" + novice.room().screen() == QString::fromLatin1(tab));
    }
}

} // namespace

TEST_CASE("a first day with keys, with the mouse and with a finger, in every window and language") {
    for (const models::Language& language : models::languageTable)
        for (const QSize size : {QSize(1280, 800), QSize(600, 960), QSize(1920, 1080), QSize(480, 640)})
            for (const Hand hand : {Hand::keys, Hand::mouse, Hand::finger}) {
                const Spoken spoken(language.code);
                Novice novice(hand);
                novice.resize(size.width(), size.height());
                novice.play(0.1);
                CAPTURE(std::string(language.code));
                CAPTURE(size.width());
                CAPTURE(static_cast<int>(hand));
                justAClick(novice);
                firstPassage(novice);
                drill(novice);
                passagePage(novice);
                everyScreen(novice);
                firstScale(novice);
                CHECK(novice.warnings().join("\n").toStdString() == "");
            }
}

// From the empty folder until something sounds.
TEST_CASE("a first click, a first passage and a first scale take few keys or clicks") {
    for (const Hand hand : {Hand::keys, Hand::mouse, Hand::finger}) {
        CAPTURE(static_cast<int>(hand));
        const bool keys = hand == Hand::keys;
        Novice click(hand);
        keys ? click.key(Qt::Key_F2) : click.press("justAClick");
        click.atTheDrill("clickStart", Qt::Key_Space);
        CHECK(click.room().click()->sounds());
        CHECK(click.presses() == 2);

        Novice passage(hand);
        keys ? passage.key(Qt::Key_Return) : passage.press("begin");
        passage.atTheDrill("start", Qt::Key_Space);
        CHECK(passage.drill().state() == DrillModel::State::Playing);
        CHECK(passage.presses() == 2);

        Novice scale(hand);
        scale.press("tab-scales");
        scale.chooseTheOboe();
        if (scale.find("toGrid") != nullptr) scale.press("toGrid");
        scale.press("drillScale");
        scale.atTheDrill("start", Qt::Key_Space);
        CHECK(scale.drill().state() == DrillModel::State::Playing);
        MESSAGE("a first scale: " << scale.presses());
        CHECK(scale.presses() <= (keys ? 40 : 5));
    }
}
