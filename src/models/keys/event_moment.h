// SPDX-License-Identifier: GPL-3.0-or-later
// When a key, a button or a finger went down.
#pragma once

#include <cstdint>

namespace piolo::models {

/// `stamp`: the timestamp of a Qt input event, in milliseconds. `now` and the result are nanoseconds of the
/// monotonic clock. X11 and Wayland stamp events with that clock, truncated to 32 bits. If the resulting age
/// is not plausible (another clock), the event counts as happening now.
[[nodiscard]] constexpr std::int64_t eventMoment(std::uint64_t stamp, std::int64_t now) {
    constexpr std::int64_t nanosPerMilli = 1'000'000;
    constexpr std::uint32_t oldest = 500;
    const auto age = static_cast<std::uint32_t>(now / nanosPerMilli) - static_cast<std::uint32_t>(stamp);
    return age <= oldest ? now - std::int64_t{age} * nanosPerMilli : now;
}

} // namespace piolo::models
