// SPDX-License-Identifier: GPL-3.0-or-later
// Where on the screens keys are handled.
#pragma once

namespace piolo::models {

/// Bits, combined for a key that works in several of them. In each, a key does one thing.
enum class KeyScope : unsigned {
    none = 0,
    drill = 1,
    runThrough = 2,
    log = 4,
    form = 8,
    set = 16,
    click = 32,
    welcome = 64,
    /// The large tempo of the stopped drill, while it is typed into; before the drill's own keys.
    figure = 128
};

[[nodiscard]] constexpr KeyScope operator|(KeyScope a, KeyScope b) {
    return static_cast<KeyScope>(static_cast<unsigned>(a) | static_cast<unsigned>(b));
}

[[nodiscard]] constexpr bool overlap(KeyScope a, KeyScope b) {
    return (static_cast<unsigned>(a) & static_cast<unsigned>(b)) != 0;
}

} // namespace piolo::models
