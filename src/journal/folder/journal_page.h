// SPDX-License-Identifier: GPL-3.0-or-later
// What one journal file holds, read by itself: several can be read at the same time.
#pragma once

#include "core/base/result.h"
#include "core/history/fact.h"
#include "journal/folder/line_source.h"

#include <cstdint>
#include <limits>
#include <optional>
#include <string>
#include <vector>

namespace piolo::journal {

/// Bytes that a line takes as a rule.
inline constexpr std::uintmax_t usualLine = 270;

/// The highest places that were given out.
struct HighestPlaces {
    std::int64_t order = 0;    ///< values after the latest plausible one ignored
    std::int64_t ownOrder = 0; ///< of this device, whatever the clock says
    std::uint64_t ownSeq = 0;  ///< of this device
    std::int64_t leastAhead = std::numeric_limits<std::int64_t>::max(); ///< the lowest of those ignored

    void raiseTo(const HighestPlaces& other) noexcept;
};

struct JournalPage {
    std::string path;
    std::vector<Fact> facts;
    std::vector<long> lines;   ///< of each fact, from 1
    std::vector<Fault> faults; ///< in the order of their lines; one of the file itself stands last
    HighestPlaces highest;
    bool unclosed = false; ///< this device's own, and its last line has no newline yet
    ReadExtent extent;
    bool changed = false; ///< it does not begin with what was known of it: nothing else here counts
};

/// Any thread. A file that cannot be read gives a page with that fault. With `known` only what follows that
/// is taken; a file that cannot be read has then changed.
[[nodiscard]] JournalPage readPage(const std::string& path, const std::string& device,
                                   std::int64_t latestOrder,
                                   const std::optional<ReadExtent>& known = std::nullopt);

} // namespace piolo::journal
