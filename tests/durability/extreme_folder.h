// SPDX-License-Identifier: GPL-3.0-or-later
// A practice folder in which every value that a valid fact may have is used to its ends.
#pragma once

#include <cstddef>
#include <cstdint>
#include <string>

namespace piolo::test {

struct ExtremeFolder {
    std::uint64_t seed = 1; ///< the same seed gives the same facts
    std::size_t facts = 2000;
    /// All runs are of one day and one passage; otherwise of any day from year 1 to 9999 and of ten passages.
    bool oneDay = false;
};

/// Writes FOLDER/journal/DEVICE-2026.jsonl. False if it cannot be written.
bool writeExtremeFolder(const std::string& folder, const ExtremeFolder& extreme);

} // namespace piolo::test
