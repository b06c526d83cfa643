// SPDX-License-Identifier: GPL-3.0-or-later
// A piece made or edited.
#pragma once

#include "core/facts/fact_role.h"
#include "core/passage/piece.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace piolo {

/// A piece was made or edited: only what changed. `due` holds nothing inside to take the date away.
struct PieceFact {
    static constexpr std::string_view kindName = "piece";
    static constexpr FactRole role = FactRole::elsewhere;

    Id piece;
    std::optional<std::string> name;
    std::optional<std::string> instrument;
    std::optional<std::optional<Date>> due;
    std::optional<std::string> composer{};
    std::optional<std::int32_t> transposition{};
    std::optional<std::int32_t> bars{};
    std::optional<PieceMusic> music{};
    std::optional<std::string> notes{};
    bool operator==(const PieceFact&) const = default;
};

} // namespace piolo
