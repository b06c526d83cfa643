// SPDX-License-Identifier: GPL-3.0-or-later
// Notices when a sign of life stops changing.
#pragma once

#include <cstdint>
#include <optional>

namespace piolo::device {

/// Counts only time in which it was called regularly: if the watcher itself was held up, the watched thread
/// may have been, too. Has no clock of its own; callers pass the time.
class Watchdog {
public:
    /// `sign` is any number that changes while the watched thread is alive. Returns the nanoseconds since its
    /// last change.
    std::int64_t look(std::int64_t nanos, std::uint64_t sign) noexcept;

    /// The most that one call adds to the quiet time.
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
