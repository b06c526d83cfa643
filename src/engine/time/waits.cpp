// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/time/waits.h"

namespace piolo::engine {

void Waits::add(Wait wait) noexcept {
    if (count_ < waits_.size()) waits_[count_++] = wait;
}

std::uint64_t Waits::before(std::uint64_t place) const noexcept {
    std::uint64_t ticks = 0;
    for (std::size_t i = 0; i < count_ && waits_[i].at <= place; ++i) ticks += waits_[i].ticks;
    return ticks;
}

Waits::Stand Waits::after(std::uint64_t ticks) const noexcept {
    std::uint64_t waited = 0;
    for (std::size_t i = 0; i < count_ && waits_[i].at + waited <= ticks; ++i) {
        if (ticks < waits_[i].at + waited + waits_[i].ticks) return {waits_[i].at, true};
        waited += waits_[i].ticks;
    }
    return {ticks - waited, false};
}

} // namespace piolo::engine
