// SPDX-License-Identifier: GPL-3.0-or-later
// The most recent runs that ended, so that a press can be matched to the run that was audible when it was
// made.
#pragma once

#include "engine/drill/tally.h"
#include "engine/time/section.h"

#include <array>
#include <cstddef>
#include <cstdint>

namespace piolo::engine {

/// One run, either the current one or one that ended.
struct RunRecord {
    std::uint64_t number = 0;
    std::uint64_t ownFrom = 0; ///< presses from here on belong to it: its first note, or the end of its first
                               ///< beat
    std::uint64_t endedAt = 0; ///< the first sample after it
    PulseGrid grid;
    Section section;
    Mark mark = Mark::clean;
    BarPlace missedAt;
    std::uint64_t markedBy = 0;  ///< the press that made it missed
    std::uint64_t lastPress = 0; ///< playing on: the newest press inside the run
    std::int32_t presses = 0;    ///< playing on: the number of presses inside the run
    bool landsLonger = false;    ///< playing on: a press added a landing note of its own
    bool earlier = false;        ///< of a turn that is over
    bool closed = false;         ///< its mark was decided elsewhere since: no press can change it any more
    Tally before;
};

/// Holds the last 16 runs. Real-time-safe.
class RunHistory {
public:
    static constexpr std::size_t capacity = 16;

    void clear() noexcept { count_ = 0; }
    void add(const RunRecord& run) noexcept;
    [[nodiscard]] const RunRecord* newest() const noexcept;
    /// The run to which a press at `sample` belongs: the newest whose ownFrom is not later. Null before the
    /// first run.
    [[nodiscard]] RunRecord* ownerOf(std::uint64_t sample) noexcept;
    /// Their turn is over: presses can still change these runs, but not the standing any more.
    void turnOver() noexcept;
    /// No press can change these runs any more.
    void close() noexcept;
    /// Marks `run` as missed after all. Returns the tally after it and every later run.
    Tally missedAfterAll(RunRecord& run, const DrillPlan& plan) noexcept;

private:
    std::array<RunRecord, capacity> runs_{}; // oldest first
    std::size_t count_ = 0;
};

} // namespace piolo::engine
