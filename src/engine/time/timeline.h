// SPDX-License-Identifier: GPL-3.0-or-later
// The position of the drill: the current section on the current grid, and the samples of what comes next.
#pragma once

#include "engine/time/section.h"

#include <cstdint>

namespace piolo::engine {

/// All functions: audio thread, real-time-safe.
class Timeline {
public:
    /// Starts a new grid whose tick 0 is at `origin`.
    void begin(Origin origin, Tempo tempo, SampleRate rate, const DrillMeasure& measure) noexcept;
    /// Continues in `tempo` from `tick` on. Returns the number of that tick from now on; the grid stays the
    /// same if the tempo does.
    std::uint64_t turn(std::uint64_t tick, Tempo tempo) noexcept;
    /// Moves to the next section. It has not begun until setBegun() is called.
    void enter(const Section& section) noexcept;
    void setBegun() noexcept { begun_ = true; }
    /// Makes the current section `ticks` longer.
    void extend(std::uint64_t ticks) noexcept;
    /// Undoes extend().
    void shorten(std::uint64_t ticks) noexcept;
    /// Moves past a pulse that has sounded.
    void passPulse() noexcept;

    [[nodiscard]] const PulseGrid& grid() const noexcept { return grid_; }
    [[nodiscard]] Tempo tempo() const noexcept { return grid_.tempo; }
    [[nodiscard]] const Section& section() const noexcept { return section_; }
    [[nodiscard]] bool hasBegun() const noexcept { return begun_; }
    [[nodiscard]] bool inRun() const noexcept { return begun_ && section_.phase == Phase::run; }
    [[nodiscard]] std::uint64_t sampleOf(std::uint64_t tick) const noexcept;
    [[nodiscard]] std::uint64_t endSample() const noexcept { return endSample_; }
    /// The next pulse of the grid to be rendered, sounding or not; it may be beyond the section.
    [[nodiscard]] std::uint64_t nextPulse() const noexcept { return pulse_; }
    [[nodiscard]] bool pulseIsInside() const noexcept { return pulse_ < section_.end; }
    [[nodiscard]] std::uint64_t pulseSample() const noexcept { return pulseSample_; }
    /// The tick of the next bar, or the end of the section if that comes first.
    [[nodiscard]] std::uint64_t nextBar() const noexcept;
    /// The sample of the next thing to happen.
    [[nodiscard]] std::uint64_t nextSample() const noexcept;

private:
    void find(std::uint64_t pulse) noexcept;

    PulseGrid grid_;
    DrillMeasure measure_;
    Section section_;
    bool begun_ = false;
    std::uint64_t startSample_ = 0;
    std::uint64_t endSample_ = Section::never;
    std::uint64_t pulse_ = 0;
    std::uint64_t pulseSample_ = 0;
};

} // namespace piolo::engine
