// SPDX-License-Identifier: GPL-3.0-or-later
// The thread that puts lines on disk.
#pragma once

#include "journal/folder/folder_lock.h"
#include "journal/folder/journal.h"

#include <cstddef>
#include <memory>
#include <string>
#include <thread>
#include <vector>

namespace piolo::journal {

/// A fact on its way to disk.
struct WaitingLine {
    Id id;
    std::string path;
    std::string text; ///< with its newline
};

/// Appends what is handed over, all that waits in one write and one sync, then tells which facts are saved.
/// After a failed or short write or a failed sync it closes the file, opens it again and writes the same
/// lines again behind a newline, until they are down: the reader counts ids once.
class FactWriter {
public:
    /// `unclosed` files get a newline first. The lock is kept for as long as the thread may write.
    FactWriter(FolderLock lock, std::vector<std::string> unclosed, JournalHearer hearer,
               const JournalPorts& ports);
    /// Waits for what is unsaved, at most Pauses::farewell.
    ~FactWriter();
    FactWriter(const FactWriter&) = delete;
    FactWriter& operator=(const FactWriter&) = delete;

    /// Any thread; waits for no disk.
    void add(WaitingLine line);
    [[nodiscard]] std::size_t unsaved() const;
    /// True when all is on disk before `millis` have passed.
    bool flush(int millis);

private:
    class Body;
    std::shared_ptr<Body> body_; // the thread's too: it may be stuck in the disk when this goes
    std::thread thread_;
};

} // namespace piolo::journal
