// SPDX-License-Identifier: GPL-3.0-or-later
// Notices that a sign of life has stopped coming.
#pragma once

#include <cstdint>
#include <optional>

namespace piolo::device {

/// Counts only time in which it was looking: when the watcher itself was held up, what is watched may have
/// been too. Pure; time is given.
class Watchdog {
public:
    /// `sign` is any number that changes while there is life. Returns the nanoseconds of quiet so far.
    std::int64_t look(std::int64_t nanos, std::uint64_t sign) noexcept;

    /// One look adds at most this much quiet.
    static constexpr std::int64_t longestStep = 250'000'000;

private:
    struct Seen {
        std::int64_t nanos = 0;
        std::uint64_t sign = 0;
    };
    std::optional<Seen> seen_;
    std::int64_t quiet_ = 0;
};

} // namespace piolo::device
