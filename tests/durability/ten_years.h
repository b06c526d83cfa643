// SPDX-License-Identifier: GPL-3.0-or-later
// A practice folder of ten years, generated from a seed: a player who does a hundred runs a day.
#pragma once

#include <cstdint>
#include <string>

namespace piolo::test {

struct TenYears {
    long runs = 365'000;       ///< ten years at a hundred a day
    std::uint64_t seed = 1851; ///< the same seed gives the same bytes
};

/// The device on which they were played.
[[nodiscard]] std::string deviceOfTenYears();
/// The local time at the end of the last day, in milliseconds.
[[nodiscard]] std::int64_t endOf(const TenYears& years);
/// Writes FOLDER/journal/DEVICE-YEAR.jsonl, one file per year. False if a file cannot be written.
bool writeTenYears(const std::string& folder, const TenYears& years);

} // namespace piolo::test
