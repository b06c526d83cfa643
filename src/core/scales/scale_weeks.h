// SPDX-License-Identifier: GPL-3.0-or-later
// Which keys were practised in which weeks.
#pragma once

#include "core/history/notebook.h"
#include "core/scales/key_order.h"

#include <array>
#include <string_view>
#include <vector>

namespace piolo {

/// A week from Monday to Sunday: by pitch class, how many runs of scales were played.
struct ScaleWeek {
    Date monday;
    std::array<std::int32_t, keyCount> runs{};
};

/// The Monday of the week of `date` (weeks as in ISO 8601).
[[nodiscard]] Date mondayOf(Date date) noexcept;

/// The last `weeks` weeks, the present one last, void runs left out. All kinds, ranges and subdivisions;
/// scales of that instrument (as named in the settings). What was removed counts as well: it was played.
[[nodiscard]] std::vector<ScaleWeek> scaleWeeks(const Notebook& notebook, std::string_view instrument,
                                                Date today, int weeks);

} // namespace piolo
