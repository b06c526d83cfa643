// SPDX-License-Identifier: GPL-3.0-or-later
// The thread that writes lines to disk.
#pragma once

#include "journal/folder/folder_lock.h"
#include "journal/folder/journal.h"
#include "journal/folder/line_queue.h"

#include <cstddef>
#include <memory>
#include <string>
#include <thread>
#include <vector>

namespace piolo::journal {

/// Appends the lines it is given, all waiting ones in one write and one sync, then reports which facts are
/// saved. After a failed or short write or a failed sync, it reopens the file and writes the same lines again
/// after a newline, until that succeeds: the reader counts each id once. If it is only the sync that goes on
/// failing, later lines are written all the same.
class FactWriter {
public:
    /// `unclosed` files get a newline first. Holds the lock for as long as the thread may write.
    FactWriter(FolderLock lock, const std::vector<std::string>& unclosed, JournalHearer hearer,
               const JournalPorts& ports);
    /// end(), unless it was called.
    ~FactWriter();
    FactWriter(const FactWriter&) = delete;
    FactWriter& operator=(const FactWriter&) = delete;

    /// Any thread; does not wait for the disk.
    void add(WaitingLine line);
    [[nodiscard]] std::size_t unsaved() const;
    /// True if everything is on disk within `millis`.
    bool flush(int millis);
    /// Waits for unsaved lines, at most Pauses::farewell, and returns those that are still not saved. Nothing
    /// is reported after that. Call it once, last.
    std::vector<WaitingLine> end();

private:
    class Body;
    std::shared_ptr<Body> body_; // shared with the thread, which may hang in a disk operation when this
                                 // object is destroyed
    std::thread thread_;
    bool ended_ = false;
};

} // namespace piolo::journal
