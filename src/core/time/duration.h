// SPDX-License-Identifier: GPL-3.0-or-later
// Durations in milliseconds, rounded to the nearest: for display only, never for the click.
#pragma once

#include "core/passage/passage.h"

#include <cstdint>

namespace piolo {

/// One run: pick-up, bars and landing beat. 0 for an open-ended passage.
[[nodiscard]] std::int64_t runMillis(const Music& music, Tempo tempo) noexcept;
/// One cycle: count-in, run and breath.
[[nodiscard]] std::int64_t cycleMillis(const Music& music, Tempo tempo) noexcept;
/// From `standing` to a full streak at the target if every run is clean, in whole cycles. 0 for an open-ended
/// passage.
[[nodiscard]] std::int64_t millisToTarget(const Music& music, const Rule& rule, Standing standing) noexcept;
/// The suggested number of clean runs for a run of that length: 5 up to 20 s, 3 up to 40 s, 0 beyond (make
/// shorter parts).
[[nodiscard]] int proposedCleanRuns(std::int64_t runMillis) noexcept;

} // namespace piolo
