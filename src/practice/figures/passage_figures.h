// SPDX-License-Identifier: GPL-3.0-or-later
// What the drill screen shows about a passage: today, its secure days, its stage, and its possible beats.
#pragma once

#include "core/history/notebook.h"
#include "core/rule/stage_step.h"

#include <optional>
#include <span>
#include <vector>

namespace piolo::practice {

/// The same speed counted in another beat.
struct FeltBeat {
    BeatUnit beat = BeatUnit::quarter;
    Tempo tempo = Tempo::bpm(60);
};

/// Figures only, no forecasts. Plain values.
struct PassageFigures {
    DayFigures today;
    std::optional<Tempo> best; ///< ever, with a full streak
    int secureDays = 0;
    int secureDaysNeeded = 1;
    Stage stage = Stage::slow;
    StageStep step; ///< what is still needed for the next stage

    [[nodiscard]] bool isSecure() const { return secureDays >= secureDaysNeeded; }
    /// The next stage, if the log supports it.
    [[nodiscard]] std::optional<Stage> suggested() const;
};

[[nodiscard]] PassageFigures figuresOf(const Notebook& notebook, const PassageRecord& record, Date today);
/// Those of `beats` in which the passage can be counted exactly, including the current one, with their tempi.
[[nodiscard]] std::vector<FeltBeat> feltBeats(const PassageRecord& record, Tempo tempo,
                                              std::span<const BeatUnit> beats);
/// True if more than one articulation has a best, or one other than as written.
[[nodiscard]] bool hasSeveralBests(const PassageRecord& record);

} // namespace piolo::practice
