// SPDX-License-Identifier: GPL-3.0-or-later
// The thread for everything that may hang inside the sound system.
#pragma once

#include <functional>
#include <utility>

class QThread;

namespace piolo::device {

/// A thread with an event loop that accepts work and can be abandoned. Qt Multimedia is first touched on it
/// and stays on it: its connection to the sound server belongs to the thread that first touched it, and calls
/// may never return if the server goes away.
class SoundThread {
public:
    /// `qtMayTurn` is called on the thread after each piece of work. While it returns false, only posted work
    /// runs on the thread, and none of Qt's own events, not even timers. Null means always true.
    explicit SoundThread(std::function<bool()> qtMayTurn = {}) : qtMayTurn_{std::move(qtMayTurn)} {}
    /// end().
    ~SoundThread();
    SoundThread(const SoundThread&) = delete;
    SoundThread& operator=(const SoundThread&) = delete;

    /// One thread at a time, but any. Runs `work` on the thread after all work posted before. Does not wait.
    void post(std::function<void()> work);
    /// Abandons the current thread, which hangs, with everything that it keeps alive; the next post() starts
    /// a new one.
    void abandon();
    /// Any thread. The number of threads of this process that were abandoned.
    [[nodiscard]] static int leftBehind() noexcept;

    /// Ends the thread if it answers within a second; otherwise abandons it. The next post() starts a new
    /// one.
    void end();

    /// The single instance of this process, in which Qt's events run only while a sound server answers. It is
    /// never destroyed; call end() before the program's exit handlers run, since the thread uses what they
    /// destroy.
    [[nodiscard]] static SoundThread& ofProcess();

private:
    class WorkQueue;
    std::function<bool()> qtMayTurn_;
    QThread* thread_ = nullptr;
    WorkQueue* queue_ = nullptr; // lives on that thread
};

} // namespace piolo::device
