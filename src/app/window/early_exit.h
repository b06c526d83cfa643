// SPDX-License-Identifier: GPL-3.0-or-later
// The display goes away: Qt ends the program from inside its event loop.
#pragma once

#include <functional>

namespace piolo::app {

/// While this exists, a call of exit() saves and then ends the program at once. Otherwise exit handlers would
/// destroy what the window and its threads still use. Main thread; one at a time.
class EarlyExit {
public:
    /// `save` must not wait for long.
    explicit EarlyExit(std::function<void()> save);
    ~EarlyExit();
    EarlyExit(const EarlyExit&) = delete;
    EarlyExit& operator=(const EarlyExit&) = delete;
};

} // namespace piolo::app
