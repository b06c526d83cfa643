// SPDX-License-Identifier: GPL-3.0-or-later
// How long things take, in milliseconds rounded to the nearest: for people to read, never for the click.
#pragma once

#include "core/passage/passage.h"

#include <cstdint>

namespace piolo {

/// One run: pick-up, bars and the landing beat. 0 for an open-ended passage.
[[nodiscard]] std::int64_t runMillis(const Music& music, Tempo tempo) noexcept;
/// One cycle: count-in, run and breath.
[[nodiscard]] std::int64_t cycleMillis(const Music& music, Tempo tempo) noexcept;
/// From `standing` until a full streak at the target when every run is clean, in whole cycles. 0 for an
/// open-ended passage.
[[nodiscard]] std::int64_t millisToTarget(const Music& music, const Rule& rule, Standing standing) noexcept;
/// The clean runs proposed for a run of that length: 5 up to 20 s, 3 up to 40 s, 0 beyond (make shorter
/// parts).
[[nodiscard]] int proposedCleanRuns(std::int64_t runMillis) noexcept;

} // namespace piolo
