// SPDX-License-Identifier: GPL-3.0-or-later
// What is known about a practice folder from an earlier reading.
#pragma once

#include "core/history/stored_history.h"
#include "journal/folder/journal_page.h"

#include <memory>
#include <string>
#include <vector>

namespace piolo::journal {

struct KnownFile {
    std::string name; ///< in journal/
    ReadExtent extent;
    std::vector<Fault> faults; ///< in order of lines; their locations have no file
};

struct KnownFolder {
    std::vector<KnownFile> files; ///< all of them, in order of name
    HighestPositions highest;
    std::shared_ptr<const StoredHistory> history; ///< the facts of these files
};

} // namespace piolo::journal
