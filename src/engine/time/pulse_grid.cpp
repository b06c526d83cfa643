// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/time/pulse_grid.h"

namespace piolo::engine {

namespace {

using Wide = unsigned __int128;

/// The distance from the origin to a pulse: exactly whole + rest/divisor samples.
struct Distance {
    std::uint64_t whole;
    std::uint64_t rest;
    std::uint64_t divisor;
};

// For k < 2^52: 60000·rate < 2^34 and tempo·perBeat < 2^43, so nothing here exceeds 2^109.
Distance distanceTo(const PulseGrid& grid, std::uint64_t k) noexcept {
    const auto divisor =
        static_cast<std::uint64_t>(grid.tempo.thousandths()) * static_cast<std::uint64_t>(grid.perBeat);
    const Wide length = Wide{k} * 60'000U * static_cast<std::uint64_t>(grid.rate.hertz);
    return {static_cast<std::uint64_t>(length / divisor), static_cast<std::uint64_t>(length % divisor),
            divisor};
}

} // namespace

std::uint64_t PulseGrid::sampleOf(std::uint64_t k) const noexcept {
    const auto distance = distanceTo(*this, k);
    // All three terms over the common denominator divisor·2^64: the rest, the origin's fraction and one half.
    const Wide parts = (Wide{distance.rest} << 64U) + Wide{origin.fraction} * distance.divisor +
                       (Wide{distance.divisor} << 63U);
    return origin.sample + distance.whole + static_cast<std::uint64_t>((parts >> 64U) / distance.divisor);
}

Origin PulseGrid::originAt(std::uint64_t k) const noexcept {
    const auto distance = distanceTo(*this, k);
    const Wide twice = (Wide{distance.rest} << 65U) + distance.divisor;
    const Wide fraction = Wide{origin.fraction} + twice / (Wide{distance.divisor} * 2U);
    return {origin.sample + distance.whole + static_cast<std::uint64_t>(fraction >> 64U),
            static_cast<std::uint64_t>(fraction)};
}

} // namespace piolo::engine
