// SPDX-License-Identifier: GPL-3.0-or-later
// Which keys were practised in which weeks.
#pragma once

#include "core/history/notebook.h"
#include "core/scales/key_order.h"

#include <array>
#include <string_view>
#include <vector>

namespace piolo {

/// A week from Monday to Sunday: the number of runs of scales by pitch class.
struct ScaleWeek {
    Date monday;
    std::array<std::int32_t, keyCount> runs{};
};

/// The Monday of the week that contains `date` (ISO 8601 weeks).
[[nodiscard]] Date mondayOf(Date date) noexcept;

/// The last `weeks` weeks, the current one last, without void runs. All kinds, ranges and subdivisions of
/// scales for that instrument (as named in the settings). Removed scales count as well, because they were
/// played.
[[nodiscard]] std::vector<ScaleWeek> scaleWeeks(const Notebook& notebook, std::string_view instrument,
                                                Date today, int weeks);

} // namespace piolo
