// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/early_exit.h"

#include <cstdlib>
#include <utility>

namespace piolo::app {

namespace {

/// Never destroyed: exit handlers look at it.
std::function<void()>& saving() {
    static auto* const kept = new std::function<void()>;
    return *kept;
}

void endAtOnce() {
    if (!saving()) return;
    std::exchange(saving(), {})();
    std::_Exit(EXIT_FAILURE);
}

} // namespace

EarlyExit::EarlyExit(std::function<void()> save) {
    static const bool registered = std::atexit(endAtOnce) == 0;
    if (registered) saving() = std::move(save);
}

EarlyExit::~EarlyExit() { saving() = {}; }

} // namespace piolo::app
