// SPDX-License-Identifier: GPL-3.0-or-later
#include "device/sound/render_ownership.h"

namespace piolo::device {

bool RenderOwnership::claim(Number number) noexcept {
    auto word = word_.load(std::memory_order_relaxed);
    while ((word >> 1) < number) {
        const auto mine = (number << 1) | (word & inside);
        if (word_.compare_exchange_weak(word, mine, std::memory_order_acq_rel, std::memory_order_relaxed))
            return true;
    }
    return (word >> 1) == number;
}

bool RenderOwnership::enter(Number number) noexcept {
    auto empty = number << 1;
    return word_.compare_exchange_strong(empty, empty | inside, std::memory_order_acquire,
                                         std::memory_order_relaxed);
}

} // namespace piolo::device
