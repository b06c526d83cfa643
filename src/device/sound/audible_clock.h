// SPDX-License-Identifier: GPL-3.0-or-later
// Which sample is audible now: a straight line over the monotonic clock, corrected slowly.
#pragma once

#include <array>
#include <atomic>
#include <cstdint>

namespace piolo::device {

/// One thread writes at a time, any thread reads. Lock-free and real-time-safe.
class AudibleClock {
public:
    /// Writer. Stands still at `sample` until the first correct(); nothing before it is ever told again.
    void park(double sample, std::int32_t rate) noexcept;
    /// Writer. `sample` is audible at `nanos`, and the line goes on from there at `rate` samples a second.
    void anchor(std::int64_t nanos, double sample, std::int32_t rate) noexcept;
    /// Writer. A measurement: takes the line towards `measured` without a step, quickly at first and slowly
    /// later, as single measurements are off by several milliseconds. Error beyond 100 ms: anchors anew.
    void correct(std::int64_t nanos, double measured) noexcept;

    /// Any thread. The place on the line, never below what was parked at.
    [[nodiscard]] double at(std::int64_t nanos) const noexcept;

private:
    struct Line {
        std::int64_t nanos = 0;
        double sample = 0;
        double perSecond = 0;
        double floor = 0;
        [[nodiscard]] double at(std::int64_t when) const noexcept;
    };
    // Four slots in turn: a reader's copy is whole unless the writer has come round to it meanwhile.
    struct Slot {
        std::atomic<std::int64_t> nanos{0};
        std::atomic<double> sample{0};
        std::atomic<double> perSecond{0};
        std::atomic<double> floor{0};
    };
    static constexpr std::size_t slotCount = 4;
    static_assert(std::atomic<double>::is_always_lock_free);

    void publish(const Line& line) noexcept;
    [[nodiscard]] Line read() const noexcept;

    std::array<Slot, slotCount> slots_;
    std::atomic<std::uint64_t> latest_{0};
    Line line_;             // writer's
    std::int32_t rate_ = 0; // writer's
    int corrections_ = 0;   // writer's: since the last anchor
    bool parked_ = true;    // writer's
};

} // namespace piolo::device
