// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/keys/pedal_press.h"

#include <algorithm>

namespace piolo::practice {

// Not before the release is certain.
std::int64_t PedalPress::singleAfter() const {
    return std::max(since_ + timing_.twice, upAt_ + timing_.bounce);
}

PedalPress::Acts PedalPress::pass(std::int64_t nanos) {
    if (!open_) return {};
    if (isDown_) {
        if (nanos < heldFrom()) return {};
        open_ = false;
        return {{PedalAct::Kind::held, since_, marked_}};
    }
    if (nanos <= singleAfter()) return {};
    open_ = false;
    if (marked_) return {}; // reported when it came
    return {{PedalAct::Kind::press, since_, false}};
}

PedalPress::Acts PedalPress::down(std::int64_t nanos, bool atOnce) {
    Acts acts = pass(nanos);
    if (isDown_) return acts; // another switch of the same pedal
    isDown_ = true;
    if (open_) {
        open_ = false;
        acts.push_back({PedalAct::Kind::twice, nanos, marked_});
        return acts;
    }
    open_ = true;
    marked_ = atOnce;
    since_ = nanos;
    if (atOnce) acts.push_back({PedalAct::Kind::mark, nanos, false});
    return acts;
}

PedalPress::Acts PedalPress::up(std::int64_t nanos) {
    Acts acts = pass(nanos);
    isDown_ = false;
    upAt_ = nanos;
    return acts;
}

void PedalPress::stillDown() { isDown_ = true; }

std::optional<std::int64_t> PedalPress::due() const {
    if (!open_) return std::nullopt;
    return isDown_ ? heldFrom() : singleAfter() + 1;
}

} // namespace piolo::practice
