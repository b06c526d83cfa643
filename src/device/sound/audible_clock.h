// SPDX-License-Identifier: GPL-3.0-or-later
// Which sample is audible now: a straight line over the monotonic clock, corrected slowly.
#pragma once

#include <array>
#include <atomic>
#include <cstdint>

namespace piolo::device {

/// One writer thread at a time; any thread reads. Lock-free and real-time-safe.
class AudibleClock {
public:
    /// Writer. Stops the clock at `sample` until the first correct(). at() never returns less than `sample`
    /// after that.
    void park(double sample, std::int32_t rate) noexcept;
    /// Writer. `sample` is audible at `nanos`; from there the line continues at `rate` samples per second.
    void anchor(std::int64_t nanos, double sample, std::int32_t rate) noexcept;
    /// Writer. Takes in a measurement: moves the line towards `measured` without a jump, quickly at first and
    /// slowly later, because single measurements are off by several milliseconds. If the error exceeds 100
    /// ms, the line restarts at the measurement.
    void correct(std::int64_t nanos, double measured) noexcept;

    /// Any thread. The position on the line, never less than the sample at which it was last parked.
    [[nodiscard]] double at(std::int64_t nanos) const noexcept;

private:
    struct Line {
        std::int64_t nanos = 0;
        double sample = 0;
        double perSecond = 0;
        double floor = 0;
        [[nodiscard]] double at(std::int64_t when) const noexcept;
    };
    // Four slots in turn: a reader's copy is consistent unless the writer reaches that slot again meanwhile.
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
    Line line_;             // writer only
    std::int32_t rate_ = 0; // writer only
    int corrections_ = 0;   // writer only: since the last anchor
    bool parked_ = true;    // writer only
};

} // namespace piolo::device
