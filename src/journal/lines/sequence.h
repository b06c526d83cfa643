// SPDX-License-Identifier: GPL-3.0-or-later
// Assigns numbers so that a device's next fact comes after everything it knows.
#pragma once

#include <cstdint>

namespace piolo::journal {

struct FolderContents;

/// Seq counts the facts of a device. Order is a logical clock: the clock time, but always after the highest
/// order read, whatever device it is from. So a clock that is set back never reorders what was played, and
/// what is played after reading another device's facts comes after them, even if its clock is far ahead.
class Sequence {
public:
    struct Numbers {
        std::uint64_t seq = 0;
        std::int64_t order = 0;
    };

    Sequence() = default;
    explicit Sequence(const FolderContents& contents) noexcept;
    [[nodiscard]] Numbers next(std::int64_t nowMillis) noexcept;

private:
    std::uint64_t seq_ = 0;
    std::int64_t order_ = 0;
};

} // namespace piolo::journal
