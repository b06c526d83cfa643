// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/drill/test_sound.h"

#include "practice/drill/test_bar.h"

#include <utility>

namespace piolo::practice {

TestSound::TestSound(DrillSession& session, std::function<bool()> mayPlay, QObject* parent)
    : QObject(parent), session_(session), mayPlay_(std::move(mayPlay)) {
    settling_.setSingleShot(true);
    settling_.setInterval(settleMillis);
    connect(&settling_, &QTimer::timeout, this, &TestSound::play);
}

void TestSound::want(engine::Layer layer) {
    wanted_ = layer;
    settling_.start();
}

void TestSound::play() {
    if (mayPlay_() && !session_.active()) session_.play(testBar(wanted_));
}

} // namespace piolo::practice
