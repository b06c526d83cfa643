// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/drill/beat_view.h"

#include <doctest/doctest.h>

using namespace piolo;
using namespace piolo::models;

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
