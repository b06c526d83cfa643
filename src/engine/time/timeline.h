// SPDX-License-Identifier: GPL-3.0-or-later
// Where the drill is: the present section on the present grid, and the samples of what comes next.
#pragma once

#include "engine/queue/command.h"
#include "engine/time/section.h"

#include <cstdint>

namespace piolo::engine {

/// All of it is for the audio thread and real-time-safe.
class Timeline {
public:
    /// A new grid: its tick 0 lies at `origin`.
    void begin(Origin origin, Tempo tempo, SampleRate rate, const DrillMeasure& measure) noexcept;
    /// From `tick` on in `tempo`. Returns the tick's number from now on; the same grid goes on when the tempo
    /// is the same.
    std::uint64_t turn(std::uint64_t tick, Tempo tempo) noexcept;
    /// The next section. It has not begun until setBegun() is called.
    void enter(const Section& section) noexcept;
    void setBegun() noexcept { begun_ = true; }
    /// The present section lasts `ticks` longer.
    void extend(std::uint64_t ticks) noexcept;
    /// Takes that back.
    void shorten(std::uint64_t ticks) noexcept;
    /// The next pulse has sounded.
    void passPulse() noexcept;

    [[nodiscard]] const PulseGrid& grid() const noexcept { return grid_; }
    [[nodiscard]] Tempo tempo() const noexcept { return grid_.tempo; }
    [[nodiscard]] const Section& section() const noexcept { return section_; }
    [[nodiscard]] bool hasBegun() const noexcept { return begun_; }
    [[nodiscard]] bool inRun() const noexcept { return begun_ && section_.phase == Phase::run; }
    [[nodiscard]] std::uint64_t sampleOf(std::uint64_t tick) const noexcept;
    [[nodiscard]] std::uint64_t endSample() const noexcept { return endSample_; }
    /// The next pulse of the grid that is not rendered, sounding or not; it may lie beyond the section.
    [[nodiscard]] std::uint64_t nextPulse() const noexcept { return pulse_; }
    [[nodiscard]] bool pulseIsInside() const noexcept { return pulse_ < section_.end; }
    [[nodiscard]] std::uint64_t pulseSample() const noexcept { return pulseSample_; }
    /// The tick of the next pulse, beat or bar, or the section's end when that comes first.
    [[nodiscard]] std::uint64_t boundary(Boundary kind) const noexcept;
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
