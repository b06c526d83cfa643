// SPDX-License-Identifier: GPL-3.0-or-later
// Copies a practice folder, moving all its dates by whole days.
#pragma once

#include "core/base/result.h"
#include "core/history/fact.h"

#include <cstddef>
#include <cstdint>
#include <string>
#include <vector>

namespace piolo::samples {

struct SampleCopy {
    bool made = false;     ///< false: `to` already has a practice log and was left alone
    std::int64_t days = 0; ///< by how many days the dates moved
    std::size_t facts = 0;
};

/// Moves the facts by whole days: `at`, `order` and due dates. Ids, devices, times of day and offsets stay.
[[nodiscard]] std::vector<Fact> movedByDays(std::vector<Fact> facts, std::int64_t days);

/// Copies the practice log in `from` so that its last day is the day before `today`. Existing practice in
/// `to` is never touched. Faults: those of reading `from` (the first one; then nothing is written),
/// notAPracticeFolder if it contains no fact, and those of writing.
Result<SampleCopy> copySample(const std::string& from, const std::string& to, Date today);

} // namespace piolo::samples
