// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/room/under_way.h"

#include <utility>

namespace piolo::models {

void UnderWay::watch(const QString& screen, Source source) {
    watched_.push_back({screen, std::move(source)});
}

void UnderWay::setShown(const QString& screen) {
    shown_ = screen;
    refresh();
}

void UnderWay::refresh() {
    State state;
    QString screen;
    for (const Watched& watched : watched_) {
        if (watched.screen == shown_) continue;
        const State now = watched.source();
        if (now.text.isEmpty() || (!screen.isEmpty() && (state.urgent || !now.urgent))) continue;
        state = now;
        screen = watched.screen;
    }
    if (state == state_ && screen == screen_) return;
    state_ = state;
    screen_ = screen;
    emit changed();
}

} // namespace piolo::models
