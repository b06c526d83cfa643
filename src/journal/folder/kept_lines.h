// SPDX-License-Identifier: GPL-3.0-or-later
// What could not be saved before the program ended waits outside the practice folder for the next start.
#pragma once

#include "core/base/result.h"
#include "journal/folder/fact_writer.h"
#include "journal/folder/journal.h"

#include <sys/types.h>
#include <vector>

namespace piolo::journal {

/// STATEDIR/kept/HASH-DEVICE, with a file for each journal file and the inode of the journal folder that they
/// belong to. One thread at a time; waits for the disk.
class KeptLines {
public:
    explicit KeptLines(const JournalLocation& location);

    /// Adds the lines, synced. `inode` is that of the folder they belong to. Faults: cannotMakeFolder,
    /// cannotWrite, diskFull.
    Done keep(const std::vector<WaitingLine>& lines, ino_t inode) const;
    /// Appends what was kept to the journal, synced, and then removes it here. If that is interrupted, lines
    /// may be in the journal twice, which counts once. What belongs to another folder stays. Faults: as from
    /// a FactWriter.
    Done restore(AppendOpener& opener) const;

private:
    [[nodiscard]] bool belongs() const;
    [[nodiscard]] Done restoreFile(AppendOpener& opener, const std::string& path) const;

    std::string folder_;  ///< the practice folder
    std::string journal_; ///< its journal folder
    std::string device_;
    std::string kept_;
};

/// The inode of `folder`; 0 if it cannot be read.
[[nodiscard]] ino_t inodeOf(const std::string& folder);

} // namespace piolo::journal
