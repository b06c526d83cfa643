// SPDX-License-Identifier: GPL-3.0-or-later
// What a passage is played for besides the rule: without the click, in context, and from stage to stage.
#pragma once

#include "diary.h"
#include "learner.h"

namespace piolo::samples {

/// The runs of the passage's current stage in one sitting; after them the player usually follows what the log
/// suggests. `form`: how far today differs, in thousandths.
class StageRuns {
public:
    StageRuns(const Lot& lot, Learner& learner, Diary& diary, WallClock& clock, Seeded& random,
              std::int64_t form);
    void play();

private:
    [[nodiscard]] const PassageRecord& record() const;
    void playSome(RunKind kind, const Music& music);
    void run(RunKind kind, const Music& music);
    void goOn();

    const Lot& lot_;
    Learner& learner_;
    Diary& diary_;
    WallClock& clock_;
    Seeded& random_;
    std::int64_t form_;
};

} // namespace piolo::samples
