// SPDX-License-Identifier: GPL-3.0-or-later
// A practice folder of ten years, made up from a seed: a player who does a hundred runs a day.
#pragma once

#include <cstdint>
#include <string>

namespace piolo::test {

struct TenYears {
    long runs = 365'000;       ///< at a hundred a day: ten years
    std::uint64_t seed = 1851; ///< the same seed gives the same bytes
};

/// The device that played them.
[[nodiscard]] std::string deviceOfTenYears();
/// The local time at the end of the last day, in milliseconds of UTC.
[[nodiscard]] std::int64_t endOf(const TenYears& years);
/// Writes FOLDER/journal/DEVICE-YEAR.jsonl, one file a year. False when a file cannot be written.
bool writeTenYears(const std::string& folder, const TenYears& years);

} // namespace piolo::test
