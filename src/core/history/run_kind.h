// SPDX-License-Identifier: GPL-3.0-or-later
// What a run is played for: the one table.
#pragma once

#include "core/base/value_names.h"

#include <algorithm>
#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string_view>

namespace piolo {

/// Only `run` moves the rule; the others are logged apart.
enum class RunKind : std::uint8_t {
    run,
    attempt, ///< a try: one run at the target
    silent,  ///< without the click from the first note to the landing note
    context, ///< with some bars before and after
    aside    ///< at half tempo or the like
};

/// Plain values; any thread may read them.
struct RunKindInfo {
    RunKind kind;
    std::string_view name;      ///< in a curve's table of values, and in the log's filter
    std::string_view journal{}; ///< in the journal, as the value of "as"; "": it is not written there
};

/// In the order of RunKind.
inline constexpr std::array runKindTable{
    RunKindInfo{RunKind::run, "run"},
    RunKindInfo{RunKind::attempt, "try"},
    RunKindInfo{RunKind::silent, "silent", "silent"},
    RunKindInfo{RunKind::context, "context", "context"},
    RunKindInfo{RunKind::aside, "aside", "aside"},
};

[[nodiscard]] constexpr const RunKindInfo& infoOf(RunKind kind) noexcept {
    return runKindTable[static_cast<std::size_t>(kind)];
}

[[nodiscard]] constexpr std::string_view nameOf(RunKind kind) noexcept { return infoOf(kind).name; }

static_assert(std::ranges::all_of(runKindTable,
                                  [](const RunKindInfo& info) { return &infoOf(info.kind) == &info; }),
              "the table has the order of RunKind");

/// As a run's line has them.
template <>
inline constexpr auto valueNames<RunKind> = columnOf(runKindTable, &RunKindInfo::journal);

} // namespace piolo
