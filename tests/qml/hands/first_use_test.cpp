// SPDX-License-Identifier: GPL-3.0-or-later
// How many keys, clicks or touches it takes from the empty folder until something sounds.
#include "novice.h"

#include <doctest/doctest.h>

using namespace piolo;
using piolo::models::DrillModel;
using piolo::test::Hand;
using piolo::test::Novice;

TEST_CASE("a first click, passage, scale and bars of a score take few keys or clicks") {
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

        Novice score(hand);
        score.press("fromScore");
        score.openTheScore("music-choose");
        score.press("music-take");
        keys ? score.key(Qt::Key_Return, Qt::ControlModifier) : score.press("drillIt");
        score.atTheDrill("start", Qt::Key_Space);
        CHECK(score.drill().state() == DrillModel::State::Playing);
        MESSAGE("first bars from a score: " << score.presses());
        CHECK(score.presses() <= (keys ? 40 : 7));
    }
}
