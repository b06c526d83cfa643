// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/time/beat_parts.h"

#include <numeric>

namespace piolo::engine {

BeatParts BeatParts::of(std::int32_t pulses, Fraction swing, std::int32_t finer) noexcept {
    const auto pair = std::int64_t{swing.numerator} + swing.denominator;
    const auto swung = pulses % 2 == 0 ? pulses / 2 * pair : pulses;
    const auto ticks = std::lcm(std::lcm(std::int64_t{pulses}, swung), std::int64_t{finer});
    BeatParts parts;
    parts.perBeat = static_cast<std::uint64_t>(ticks);
    parts.count = pulses;
    for (std::int32_t part = 0; part < pulses; ++part) {
        const bool off = pulses % 2 == 0 && part % 2 != 0;
        const auto tick = off ? (part - 1) * ticks / pulses + 2 * ticks / pulses * swing.numerator / pair
                              : part * ticks / pulses;
        parts.at[static_cast<std::size_t>(part)] = static_cast<std::uint64_t>(tick);
    }
    return parts;
}

std::int32_t BeatParts::partAt(std::uint64_t tick) const noexcept {
    std::int32_t part = count - 1;
    while (part > 0 && at[static_cast<std::size_t>(part)] > tick) --part;
    return part;
}

std::uint64_t BeatParts::next(std::uint64_t tick) const noexcept {
    for (std::int32_t part = 0; part < count; ++part)
        if (at[static_cast<std::size_t>(part)] >= tick) return at[static_cast<std::size_t>(part)];
    return perBeat;
}

} // namespace piolo::engine
