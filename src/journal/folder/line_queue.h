// SPDX-License-Identifier: GPL-3.0-or-later
// The lines that are not saved yet, between those who record and the thread that writes.
#pragma once

#include "core/base/id.h"

#include <chrono>
#include <condition_variable>
#include <cstddef>
#include <deque>
#include <mutex>
#include <string>
#include <vector>

namespace piolo::journal {

/// A fact waiting to be written.
struct WaitingLine {
    Id id;
    std::string path;
    std::string text; ///< including its newline
};

/// Lines in order, the oldest first. Any thread; one of them, the writer, removes lines.
class LineQueue {
public:
    using Time = std::chrono::steady_clock::time_point;

    void add(WaitingLine line);
    [[nodiscard]] std::size_t size() const;
    /// The lines from number `first` on, at most `most` of them.
    [[nodiscard]] std::vector<WaitingLine> from(std::size_t first, std::size_t most = ~std::size_t{0}) const;
    /// Removes the first `count` lines.
    void remove(std::size_t count);

    /// No more lines come; the writer has until `deadline`.
    void end(Time deadline);
    [[nodiscard]] bool isOver(Time now) const;
    /// The writer has ended.
    void finish();

    /// For the writer: waits for more than `known` lines. False if none come because of end().
    bool waitForMore(std::size_t known);
    /// The same, but no longer than until `time` or the deadline.
    void waitForMore(std::size_t known, Time time);
    /// For the writer: waits until `time` or the deadline, or until end() is called.
    void pause(Time time);
    /// True if it became empty before `time`.
    bool waitUntilEmpty(Time time);
    /// True if finish() was called before the deadline.
    bool waitUntilFinished();

private:
    [[nodiscard]] Time bounded(Time time) const { return ending_ ? std::min(time, deadline_) : time; }

    mutable std::mutex mutex_;
    std::condition_variable work_;    ///< for the writer
    std::condition_variable changed_; ///< for those who wait for it
    std::deque<WaitingLine> lines_;
    bool ending_ = false;
    bool finished_ = false;
    Time deadline_;
};

} // namespace piolo::journal
