// SPDX-License-Identifier: GPL-3.0-or-later
// The figures of one day of practice.
#pragma once

#include "core/time/tempo.h"

#include <cstdint>
#include <optional>

namespace piolo {

/// A day's figures for one passage or many.
struct DayFigures {
    int runs = 0; ///< clean and missed, those that move the rule
    int clean = 0;
    int voided = 0;
    std::optional<Tempo> best; ///< the highest tempo of a clean run that day
    std::int64_t millis = 0;   ///< played, runs of every kind, void ones included
};

} // namespace piolo
