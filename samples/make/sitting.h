// SPDX-License-Identifier: GPL-3.0-or-later
// One sitting with one passage: runs, misses, and how the player responds to them.
#pragma once

#include "diary.h"
#include "learner.h"

namespace piolo::samples {

class Sitting {
public:
    /// `form`: how far today differs, in thousandths.
    Sitting(const Lot& lot, Learner& learner, Diary& diary, WallClock& clock, Seeded& random,
            std::int64_t form);
    /// Begins the day, plays about lot.runs runs, and may end with a try at the target.
    void play();

private:
    void openDay();
    void run();
    void clean(std::int64_t millis);
    void miss();
    void lateMiss(std::int64_t millis);
    void stopInside(std::int64_t millis);
    void wrongKey(std::int64_t millis);
    void comeDown();
    void goUp();
    void tryTarget();
    Id record(Mark mark, Reason reason, std::int64_t millis, std::vector<Spot> spots = {});
    [[nodiscard]] Spot placeOfMiss();
    [[nodiscard]] std::int64_t millisTo(Spot spot) const;
    [[nodiscard]] Stage stage() const;
    [[nodiscard]] Standing standing() const;
    [[nodiscard]] std::int64_t rest() const;

    const Lot& lot_;
    Learner& learner_;
    Diary& diary_;
    WallClock& clock_;
    Seeded& random_;
    std::int64_t form_;
    int missesInARow_ = 0;
    int easyStreaks_ = 0;
};

} // namespace piolo::samples
