// SPDX-License-Identifier: GPL-3.0-or-later
// The scales before the day's passages: what the grid suggests, and now and then what the player likes.
#pragma once

#include "diary.h"
#include "learner.h"

#include <list>

namespace piolo::samples {

/// Has its own random numbers, so that the season's passages do not depend on it.
class ScaleHour {
public:
    ScaleHour(Diary& diary, WallClock& clock, std::uint64_t seed)
        : diary_(diary), clock_(clock), random_(seed) {}

    /// Records the settings with the instrument, on the first day.
    void choose();
    /// `form`: how far today differs, in thousandths.
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
