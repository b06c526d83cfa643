// SPDX-License-Identifier: GPL-3.0-or-later
// Notices that the machine was suspended while something was being played.
#pragma once

#include <cstdint>

namespace piolo::practice {

/// One thread at a time.
class SleepWatch {
public:
    /// From here on, `slept` nanoseconds of suspension have passed (SoundPort::sleptNanos()).
    void begin(std::int64_t slept) noexcept { known_ = slept; }
    /// True once for each suspension of more than half a second since the last call.
    [[nodiscard]] bool sleptMeanwhile(std::int64_t slept) noexcept {
        constexpr std::int64_t enough = 500'000'000;
        const bool did = slept - known_ > enough;
        if (did) known_ = slept;
        return did;
    }

private:
    std::int64_t known_ = 0;
};

} // namespace piolo::practice
