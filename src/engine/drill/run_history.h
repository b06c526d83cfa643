// SPDX-License-Identifier: GPL-3.0-or-later
// The last runs that ended, so that a press finds the run that was audible when it was made.
#pragma once

#include "engine/drill/tally.h"
#include "engine/time/section.h"

#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>

namespace piolo::engine {

/// One run: the present one, or one that ended.
struct RunRecord {
    std::uint64_t number = 0;
    std::uint64_t beganAt = 0;
    std::uint64_t ownFrom = 0; ///< presses from here on are its own: its first note, or its first beat's end
    std::uint64_t endedAt = 0; ///< the first sample after it
    PulseGrid grid;
    Section section;
    Mark mark = Mark::clean;
    BarPlace missedAt;
    std::uint64_t markedBy = 0;  ///< the press that missed it
    std::uint64_t lastPress = 0; ///< playing on: the newest press inside
    std::int32_t presses = 0;    ///< playing on: presses inside
    bool landsLonger = false;    ///< playing on: a landing note of its own was added by a press
    bool closed = false;         ///< its mark was judged anew outside: no press can change it any more
    Tally before;
    std::optional<Tempo> setAfter; ///< a tempo set by hand between its end and the next run's
};

/// Holds the last 16 runs. Real-time-safe.
class RunHistory {
public:
    static constexpr std::size_t capacity = 16;

    void clear() noexcept { count_ = 0; }
    void add(const RunRecord& run) noexcept;
    [[nodiscard]] const RunRecord* newest() const noexcept;
    /// The run a press at `sample` belongs to: the newest whose own time had begun. Null before the first.
    [[nodiscard]] RunRecord* ownerOf(std::uint64_t sample) noexcept;
    /// A tempo was set by hand after the newest run.
    void setTempo(Tempo tempo) noexcept;
    /// No press can change these runs any more.
    void close() noexcept;
    /// `run` was missed after all: where the drill stands after it and every later run.
    Tally missedAfterAll(RunRecord& run, const DrillPlan& plan) noexcept;

private:
    std::array<RunRecord, capacity> runs_{}; // the oldest first
    std::size_t count_ = 0;
};

} // namespace piolo::engine
