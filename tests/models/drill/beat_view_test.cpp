// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/drill/beat_view.h"

#include <doctest/doctest.h>

using namespace piolo;
using models::BeatView;

namespace {

std::string placeAt(BeatView& view, std::int32_t bar) {
    engine::Event pulse;
    pulse.kind = engine::Event::Kind::pulse;
    pulse.phase = engine::Phase::run;
    pulse.bar = bar;
    view.sound(pulse);
    return view.placeText().toStdString();
}

} // namespace

TEST_CASE("the place is counted in the passage's bars, beside the part's own number") {
    BeatView view;
    Music music;
    music.bars = 4;
    music.firstBar = 41;
    view.show(music, {});
    CHECK(view.placeText().isEmpty());
    CHECK(placeAt(view, 0) == "bar 41 · 1 of 4");
    CHECK(placeAt(view, 3) == "bar 44 · 4 of 4");
    CHECK(placeAt(view, 4) == "bar 45"); // the landing note is beyond them
    CHECK(placeAt(view, -1) == "pick-up");
}

TEST_CASE("bars that are numbered from 1 are counted once, and those of an open-ended passage have no end") {
    BeatView view;
    Music music;
    music.bars = 4;
    view.show(music, {});
    CHECK(placeAt(view, 1) == "bar 2 of 4");
    music.bars = 0;
    view.show(music, {});
    CHECK(placeAt(view, 1) == "bar 2");
}

TEST_CASE("a beat shows as many parts as the click makes of it") {
    Music music;
    music.subdivision = 5;
    BeatView view;
    view.show(music, {});
    CHECK(view.parts() == 5);
    ClickPattern offbeats;
    offbeats.on = ClickOn::offbeats;
    view.show(music, offbeats);
    CHECK(view.parts() == 2);
}
