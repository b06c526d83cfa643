// SPDX-License-Identifier: GPL-3.0-or-later
// What is wrong with journal files: line by line, and between the lines.
#pragma once

#include "core/base/result.h"

#include <string>
#include <vector>

namespace piolo::practice {

/// The files to look at, and those beside them in which the passages and runs may stand that they name.
struct JournalFiles {
    std::vector<std::string> checked;
    std::vector<std::string> beside;
};

/// The *.jsonl of a practice folder (or of its journal folder), by name; or the file itself. Fault
/// cannotRead.
[[nodiscard]] Result<JournalFiles> journalFilesAt(const std::string& path);

/// Every fault of the files checked, file by file and line by line: those of reading, repeatedId where an id
/// stands for another fact than before, unknownPassage where a fact names what is recorded nowhere. A file
/// that cannot be read is the fault cannotRead.
[[nodiscard]] std::vector<Fault> faultsOf(const JournalFiles& files);

} // namespace piolo::practice
