// SPDX-License-Identifier: GPL-3.0-or-later
// Tells when it is time to rest ears and lip.
#pragma once

#include <cstdint>

namespace piolo::practice {

/// Adds up playing time and asks once per stretch of 25 minutes. Five minutes without playing begin a new
/// stretch. Plain values: callers pass the time in nanoseconds.
class RestWatch {
public:
    static constexpr std::int64_t stretchNanos = std::int64_t{25} * 60 * 1'000'000'000;
    static constexpr std::int64_t restNanos = std::int64_t{5} * 60 * 1'000'000'000;

    /// The click started or stopped.
    void playing(bool plays, std::int64_t nanos) noexcept;
    /// True if a rest is due; remains true until a rest was taken or dismiss() was called.
    [[nodiscard]] bool due(std::int64_t nanos) const noexcept;
    /// The player has seen it: not due again for the next 25 minutes.
    void dismiss(std::int64_t nanos) noexcept;

private:
    [[nodiscard]] std::int64_t played(std::int64_t nanos) const noexcept;

    bool plays_ = false;
    std::int64_t since_ = 0;
    std::int64_t played_ = 0;
};

} // namespace piolo::practice
