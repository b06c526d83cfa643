// SPDX-License-Identifier: GPL-3.0-or-later
// What could not be saved before the program ended waits outside the practice folder for the next start.
#pragma once

#include "core/base/result.h"
#include "journal/folder/fact_writer.h"
#include "journal/folder/journal.h"

#include <sys/types.h>
#include <vector>

namespace piolo::journal {

/// STATEDIR/kept/HASH-DEVICE/INODE, with a file for each journal file; INODE is that of the journal folder
/// that they belong to. One thread at a time; waits for the disk.
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
    /// The folders in kept_ that belong to this journal folder.
    [[nodiscard]] std::vector<std::string> belonging() const;
    [[nodiscard]] Done restoreFolder(AppendOpener& opener, const std::string& folder) const;
    [[nodiscard]] Done restoreFile(AppendOpener& opener, const std::string& path) const;

    std::string journal_; ///< the journal folder
    std::string device_;
    std::string kept_;
};

} // namespace piolo::journal
