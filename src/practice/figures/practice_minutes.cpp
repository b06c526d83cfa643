// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/figures/practice_minutes.h"

#include <cstdint>

namespace piolo::practice {

int minutesOn(const Notebook& notebook, Date date) {
    constexpr std::int64_t minuteMillis = 60'000;
    return static_cast<int>(notebook.day(date, {}).millis / minuteMillis);
}

} // namespace piolo::practice
