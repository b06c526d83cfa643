// SPDX-License-Identifier: GPL-3.0-or-later
// The numbers that place a device's next fact behind all it knows of.
#pragma once

#include <cstdint>

namespace piolo::journal {

struct FolderContents;

/// Seq counts a device's facts. Order is the clock, but always after the device's own last fact, and after
/// the highest read from others unless that is more than 24 h ahead: a clock set back never reorders what was
/// played, a wrong clock elsewhere never drags this one along.
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
