// SPDX-License-Identifier: GPL-3.0-or-later
// The thread on which everything happens that may hang inside the sound system.
#pragma once

#include <functional>
#include <utility>

class QThread;

namespace piolo::device {

/// A thread with an event loop that is given work, and may be given up. Qt Multimedia is first touched on it
/// and stays on it: its connection to the sound server belongs to the thread that touched it first, and what
/// it does when the server goes away may never return.
class SoundThread {
public:
    /// `qtMayTurn` is asked on the thread after each piece of work; while it says no, only work that is
    /// posted is done there and none of Qt's own events, timers included. Null: it always may.
    explicit SoundThread(std::function<bool()> qtMayTurn = {}) : qtMayTurn_{std::move(qtMayTurn)} {}
    /// Ends the thread if it answers within a second, else leaves it behind.
    ~SoundThread();
    SoundThread(const SoundThread&) = delete;
    SoundThread& operator=(const SoundThread&) = delete;

    /// Any one thread at a time. Runs `work` on the thread, after all that was posted before. Does not wait.
    void post(std::function<void()> work);
    /// Leaves the present thread, which hangs, alone for ever, with all that it keeps alive; the next post()
    /// makes a new one.
    void abandon();
    /// Any thread. How many threads of this process were left behind.
    [[nodiscard]] static int leftBehind() noexcept;

    /// The one of the process, where Qt may turn while a sound server answers. Never destroyed, so that the
    /// end of the program does not wait for it.
    [[nodiscard]] static SoundThread& ofProcess();

private:
    class Desk;
    std::function<bool()> qtMayTurn_;
    QThread* thread_ = nullptr;
    Desk* desk_ = nullptr; // lives on the thread
};

} // namespace piolo::device
