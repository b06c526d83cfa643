// SPDX-License-Identifier: GPL-3.0-or-later
// A practice folder copied with all its dates moved by whole days.
#pragma once

#include "core/base/result.h"
#include "core/history/fact.h"

#include <cstddef>
#include <cstdint>
#include <string>
#include <vector>

namespace piolo::samples {

struct SampleCopy {
    bool made = false;     ///< false: `to` holds a practice log already and was left as it is
    std::int64_t days = 0; ///< by how many days the dates moved
    std::size_t facts = 0;
};

/// The facts moved by whole days: `at`, `order` and due dates. Ids, devices, times of day and offsets stay.
[[nodiscard]] std::vector<Fact> movedByDays(std::vector<Fact> facts, std::int64_t days);

/// Copies the practice log in `from` so that its last day is the day before `today`. Practice that `to` holds
/// is never touched. Faults: those of reading `from` (the first one; nothing is written then),
/// notAPracticeFolder when it holds no fact, and those of writing.
Result<SampleCopy> copySample(const std::string& from, const std::string& to, Date today);

} // namespace piolo::samples
