// SPDX-License-Identifier: GPL-3.0-or-later
#include "device/sound/watchdog.h"

#include <algorithm>

namespace piolo::device {

std::int64_t Watchdog::look(std::int64_t nanos, std::uint64_t sign) noexcept {
    if (!seen_ || seen_->sign != sign)
        quiet_ = 0;
    else
        quiet_ += std::clamp<std::int64_t>(nanos - seen_->nanos, 0, longestStep);
    seen_ = Seen{nanos, sign};
    return quiet_;
}

} // namespace piolo::device
