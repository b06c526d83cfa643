// SPDX-License-Identifier: GPL-3.0-or-later
// Finds what is wrong in journal files, within lines and between them.
#pragma once

#include "core/base/result.h"
#include "core/time/date.h"

#include <string>
#include <vector>

namespace piolo::practice {

/// The files to check, and the files next to them that may contain the passages and runs they name.
struct JournalFiles {
    std::vector<std::string> checked;
    std::vector<std::string> beside;
};

/// The *.jsonl of a practice folder (or of its journal folder) in order of name, or the file itself. Fault
/// cannotRead.
[[nodiscard]] Result<JournalFiles> journalFilesAt(const std::string& path);

/// All faults of the checked files, file by file and line by line: those of reading; repeatedId if an id was
/// used for a different fact before; unknownPassage if a fact names something that is recorded nowhere;
/// seqTwice if a device's number was used before; datedAhead, once for each file, if what was played is dated
/// after tomorrow and no clock fact puts it right. An unreadable file is the fault cannotRead.
[[nodiscard]] std::vector<Fault> faultsOf(const JournalFiles& files, Date today);

} // namespace piolo::practice
