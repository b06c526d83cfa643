// SPDX-License-Identifier: GPL-3.0-or-later
// The content of one journal file. Files are read independently, so several can be read concurrently.
#pragma once

#include "core/base/result.h"
#include "core/history/fact.h"
#include "journal/folder/line_source.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace piolo::journal {

/// The usual length of a line in bytes.
inline constexpr std::uintmax_t usualLine = 270;

/// The highest positions assigned so far.
struct HighestPositions {
    std::int64_t order = 0;   ///< of any device
    std::uint64_t ownSeq = 0; ///< of this device

    void raiseTo(const HighestPositions& other) noexcept;
};

/// So many faults of a file are kept; one more says how many others there are (moreFaults).
inline constexpr std::size_t mostFaultsInFile = 1000;

/// Cuts the faults of one file down to that; `more` were left out already.
void limitFaults(std::vector<Fault>& faults, std::size_t more = 0);

struct JournalPage {
    std::string path;
    std::vector<Fact> facts;
    std::vector<long> lines;    ///< the line number of each fact, counted from 1
    std::vector<Fault> faults;  ///< in order of lines; a fault of the file itself comes last
    std::size_t moreFaults = 0; ///< the number of those left out
    HighestPositions highest;
    bool unclosed = false; ///< it belongs to this device, and its last line has no newline yet
    ReadExtent extent;
    bool changed = false; ///< it does not begin with what was known about it: nothing else here is valid
};

/// Any thread. For an unreadable file, returns a page with that fault. With `known`, reads only what follows
/// it; an unreadable file then counts as changed.
[[nodiscard]] JournalPage readPage(const std::string& path, const std::string& device,
                                   const std::optional<ReadExtent>& known = std::nullopt);

} // namespace piolo::journal
