// SPDX-License-Identifier: GPL-3.0-or-later
// The scales before the day's passages: what the grid proposes, and now and then what the player fancies.
#pragma once

#include "diary.h"
#include "learner.h"

#include <list>

namespace piolo::samples {

/// Draws from a chance of its own, so that the passages of the season do not depend on it.
class ScaleHour {
public:
    ScaleHour(Diary& diary, WallClock& clock, std::uint64_t seed)
        : diary_(diary), clock_(clock), random_(seed) {}

    /// The settings with the instrument, on the first day.
    void choose();
    /// `form`: thousandths by which today differs.
    void play(std::int64_t form);
    void slept(Date date);

private:
    struct Practised {
        Lot lot;
        Learner learner;
    };
    void playCell(std::int32_t notesPerBeat, int key, std::int64_t form);
    Practised& make(std::int32_t notesPerBeat, int key);

    Diary& diary_;
    WallClock& clock_;
    Seeded random_;
    std::list<Practised> practised_;
};

} // namespace piolo::samples
