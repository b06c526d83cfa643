// SPDX-License-Identifier: GPL-3.0-or-later
// A piece played from start to finish: where it stops, and how long that takes.
#pragma once

#include "diary.h"
#include "programme.h"

namespace piolo::samples {

/// Run-through number `time` (from 0) of a piece whose bars and tempo are known. Outside the drilled passages
/// there are fewer stops each time; inside them, the learners decide.
class Rehearsal {
public:
    Rehearsal(const Piece& piece, Diary& diary, WallClock& clock, Seeded& random)
        : piece_(piece), diary_(diary), clock_(clock), random_(random) {}

    /// A stop in that bar, with a probability of `perMille` per thousand.
    void mayStop(std::int32_t bar, std::int64_t perMille);
    void play(int time);

private:
    [[nodiscard]] std::int64_t millisTo(std::int32_t bar) const;

    const Piece& piece_;
    Diary& diary_;
    WallClock& clock_;
    Seeded& random_;
    std::vector<std::int32_t> stops_;
};

} // namespace piolo::samples
