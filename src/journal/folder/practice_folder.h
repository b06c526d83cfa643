// SPDX-License-Identifier: GPL-3.0-or-later
// Reads a practice folder: every *.jsonl under journal/, conflict copies included.
#pragma once

#include "core/base/result.h"
#include "core/history/fact.h"
#include "core/history/stored_history.h"
#include "journal/folder/journal_page.h"

#include <cstdint>
#include <memory>
#include <optional>
#include <stop_token>
#include <string>
#include <vector>

namespace piolo::journal {

struct KnownFolder;

/// A file of the folder, as it was when it was read.
struct ReadFile {
    std::string path;
    ReadExtent extent;
};

struct FolderContents {
    std::shared_ptr<const StoredHistory> stored; ///< facts known from an earlier reading; may be none
    std::vector<Fact> facts;                     ///< as read, those aside; duplicates included
    std::vector<Fault> faults;         ///< what was not folded, with file and line; nothing is ever deleted
    std::int64_t highestOrder = 0;     ///< values more than 24 h ahead of `nowMillis` ignored
    std::uint64_t highestSeq = 0;      ///< of `device`
    std::int64_t highestOwnOrder = 0;  ///< of `device`, whatever the clock says
    std::vector<std::string> unclosed; ///< own files whose last line has no newline yet
    std::vector<ReadFile> files;
    HighestPlaces highest; ///< what the three above are taken from
};

/// The paths of the *.jsonl in `folder` itself, whatever they are, sorted, so that every machine reads them
/// in the same order. None where there is no such folder. Fault cannotRead.
Result<std::vector<std::string>> journalFiles(const std::string& folder);
/// Reads the folder, files in the order of their names. A folder without journal/ is empty, not a fault. A
/// file that cannot be read is told in `faults` and the others are read. A fact that bears the id of an
/// earlier one and says something else is not taken (repeatedId). Faults: cannotRead, notAPracticeFolder (a
/// file).
/// When asked to stop, what it gives is not all.
Result<FolderContents> readFolder(const std::string& folder, const std::string& device,
                                  std::int64_t nowMillis, const std::stop_token& stop = {});
/// The same of a folder that was read before: only what was added since is read line by line, all else is
/// compared. Nothing when the folder does not go on where `known` ends, or when anything else leaves a doubt
/// that this is what readFolder() would give.
std::optional<FolderContents> readOn(const std::string& folder, const std::string& device,
                                     std::int64_t nowMillis, const KnownFolder& known);
/// Reads one .jsonl file the same way. Fault: cannotRead.
Result<FolderContents> readJournalFile(const std::string& path, const std::string& device,
                                       std::int64_t nowMillis);

} // namespace piolo::journal
