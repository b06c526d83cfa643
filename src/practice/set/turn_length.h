// SPDX-License-Identifier: GPL-3.0-or-later
// How long each turn of a set lasts.
#pragma once

#include "engine/drill/turn.h"

#include <algorithm>
#include <cstdint>

namespace piolo::practice {

/// Plain values.
struct TurnLength {
    enum class By : std::uint8_t { runs, minutes };

    By by = By::runs;
    std::int32_t runs = 3;    ///< 1…20
    std::int32_t minutes = 2; ///< 1…20
    bool operator==(const TurnLength&) const = default;

    static constexpr std::int32_t least = 1;
    static constexpr std::int32_t most = 20;

    /// The turn at that place (from 1) of the set.
    [[nodiscard]] engine::Turn turn(std::int32_t place, bool follows) const {
        engine::Turn turn;
        turn.place = place;
        turn.follows = follows;
        if (by == By::runs) turn.runs = std::clamp(runs, least, most);
        if (by == By::minutes) turn.seconds = 60 * std::clamp(minutes, least, most);
        return turn;
    }
};

} // namespace piolo::practice
