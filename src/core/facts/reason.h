// SPDX-License-Identifier: GPL-3.0-or-later
// Why a run is void, or why a tempo was set.
#pragma once

#include "core/base/value_names.h"

#include <cstdint>

namespace piolo {

/// Why a run was void, or why a tempo was set.
enum class Reason : std::uint8_t {
    none,
    hand,
    stopped,
    tempoChanged,
    soundLost,
    newDay,
    offer,
    named ///< the tempo that the player thinks they can play: a search for the tempo begins
};

/// Reason::none is not written.
template <>
inline constexpr std::array<std::string_view, 8> valueNames<Reason>{
    "", "hand", "stopped", "tempoChanged", "soundLost", "newDay", "offer", "named"};

/// Whether a tempo is ever set for that reason.
[[nodiscard]] constexpr bool setsTempo(Reason reason) noexcept {
    return reason == Reason::hand || reason == Reason::newDay || reason == Reason::offer ||
           reason == Reason::named;
}

} // namespace piolo
