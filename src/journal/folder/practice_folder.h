// SPDX-License-Identifier: GPL-3.0-or-later
// Reads a practice folder: every *.jsonl under journal/, including conflict copies.
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
    std::shared_ptr<const StoredHistory> stored; ///< facts known from an earlier reading; may be null
    std::vector<Fact> facts;                     ///< as read, without those; including duplicates
    std::vector<Fault> faults;         ///< lines that were not folded, with file and line; nothing is ever
                                       ///< deleted
    std::vector<std::string> unclosed; ///< own files whose last line has no newline yet
    std::vector<ReadFile> files;
    HighestPositions highest;
};

/// The paths of all *.jsonl directly in `folder`, sorted, so that every machine reads them in the same order.
/// Empty if there is no such folder. Fault cannotRead.
Result<std::vector<std::string>> journalFiles(const std::string& folder);
/// Reads the folder's files in order of name. A folder without journal/ is empty, not a fault. An unreadable
/// file is reported in `faults`, and the others are read. A fact whose id was used by an earlier, different
/// fact is not accepted (repeatedId). Faults: cannotRead, notAPracticeFolder (it is a file). If stopped on
/// request, the result is incomplete.
Result<FolderContents> readFolder(const std::string& folder, const std::string& device,
                                  const std::stop_token& stop = {});
/// The same for a folder that was read before: only what was added since is read line by line, everything
/// else is compared. Nothing if the folder does not continue where `known` ends, or if there is any doubt
/// that the result would equal that of readFolder().
std::optional<FolderContents> readOn(const std::string& folder, const std::string& device,
                                     const KnownFolder& known);
/// Reads one .jsonl file in the same way. Fault: cannotRead.
Result<FolderContents> readJournalFile(const std::string& path, const std::string& device);

} // namespace piolo::journal
