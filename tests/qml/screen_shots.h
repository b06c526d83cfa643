// SPDX-License-Identifier: GPL-3.0-or-later
// Pictures of the window, saved in the build folder for viewing.
#pragma once

#include "screen_fixture.h"

#include <functional>

namespace piolo::test {

/// Saves the picture as NAME.png. Window thread, like everything here.
void keepShot(const QImage& picture, const QString& name);

/// Shows the window at every size in both themes, saves each picture, and leaves it light at 1280x800.
/// `settle` is called before a picture is taken, `look` with each picture and whether it is dark.
void shootAll(
    ScreenFixture& fixture, const QString& name, const std::function<void()>& settle = [] {},
    const std::function<void(const QImage&, bool)>& look = [](const QImage&, bool) {});

} // namespace piolo::test
