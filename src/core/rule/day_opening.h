// SPDX-License-Identifier: GPL-3.0-or-later
// Where a new day opens. noexcept, no memory, real-time-safe.
#pragma once

#include "core/base/value_names.h"
#include "core/rule/rule.h"

#include <cstdint>

namespace piolo {

/// With which tempo a new day opens (a practice setting).
enum class DayOpening : std::uint8_t { twoRungsBelow, asLeft, start };

/// The tempo with which a new day opens. `lastFullStreak` is the tempo of the newest full streak; if it is
/// null, twoRungsBelow opens at the start. Rungs are one climb apart. The result is never above `left` and,
/// if `left` is not lower, within max(floor, start)…target for twoRungsBelow; it is `left` itself for asLeft.
[[nodiscard]] Tempo dayOpens(DayOpening opening, Tempo left, const Tempo* lastFullStreak, Tempo start,
                             const Rule& rule) noexcept;

template <>
inline constexpr std::array<std::string_view, 3> valueNames<DayOpening>{"twoRungsBelow", "asLeft", "start"};

} // namespace piolo
