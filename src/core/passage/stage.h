// SPDX-License-Identifier: GPL-3.0-or-later
// The stages that a passage goes through: the one table. The player decides which it is in, and may go back.
#pragma once

#include "core/base/value_names.h"

#include <algorithm>
#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string_view>

namespace piolo {

enum class Stage : std::uint8_t {
    slow,         ///< with the click, on the way up to the target
    secure,       ///< at the target, on different days
    withoutClick, ///< at the target, without the click
    inContext,    ///< with some bars before and after
    runThroughs   ///< in the whole piece, start to finish
};

/// Plain values; any thread may read them.
struct StageInfo {
    Stage stage;
    std::string_view name; ///< in the journal
};

/// In the order of Stage, in which a passage goes through them.
inline constexpr std::array stageTable{
    StageInfo{Stage::slow, "slow"},
    StageInfo{Stage::secure, "secure"},
    StageInfo{Stage::withoutClick, "withoutClick"},
    StageInfo{Stage::inContext, "inContext"},
    StageInfo{Stage::runThroughs, "runThroughs"},
};

[[nodiscard]] constexpr std::string_view nameOf(Stage stage) noexcept {
    return stageTable[static_cast<std::size_t>(stage)].name;
}

[[nodiscard]] constexpr std::optional<Stage> stageNamed(std::string_view name) noexcept {
    const auto* const found = std::ranges::find(stageTable, name, &StageInfo::name);
    return found == stageTable.end() ? std::nullopt : std::optional(found->stage);
}

static_assert(std::ranges::all_of(stageTable,
                                  [](const StageInfo& info) { return nameOf(info.stage) == info.name; }),
              "the table has the order of Stage");

template <>
inline constexpr auto valueNames<Stage> = columnOf(stageTable, &StageInfo::name);

} // namespace piolo
