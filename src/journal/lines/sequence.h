// SPDX-License-Identifier: GPL-3.0-or-later
// Assigns numbers so that a device's next fact comes after everything it knows.
#pragma once

#include <cstdint>

namespace piolo::journal {

struct FolderContents;

/// Seq counts the facts of a device. Order is the clock time, but always after the device's own last fact and
/// after the highest order read from others, unless that is more than 24 h ahead. So a clock that is set back
/// never reorders what was played, and a wrong clock elsewhere does not affect this device.
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
