// SPDX-License-Identifier: GPL-3.0-or-later
#include "device/sound/audible_clock.h"

#include <algorithm>
#include <cmath>

namespace piolo::device {
namespace {

constexpr double nanosPerSecond = 1e9;
constexpr double stepSeconds = 0.1;  // the time over which a correction is spread
constexpr int quickCorrections = 10; // during the first second
constexpr double quickShare = 0.3;   // of the error, removed in one step
constexpr double slowShare = 0.03;
constexpr double steepest = 0.25; // of the rate, so that the line never runs backwards
constexpr double anchorBeyondSeconds = 0.1;

} // namespace

double AudibleClock::Line::at(std::int64_t when) const noexcept {
    const auto seconds = static_cast<double>(when - nanos) / nanosPerSecond;
    return std::max(floor, sample + seconds * perSecond);
}

void AudibleClock::park(double sample, std::int32_t rate) noexcept {
    rate_ = rate;
    parked_ = true;
    publish({0, sample, 0, sample});
}

void AudibleClock::anchor(std::int64_t nanos, double sample, std::int32_t rate) noexcept {
    rate_ = rate;
    parked_ = false;
    corrections_ = 0;
    publish({nanos, sample, static_cast<double>(rate), line_.floor});
}

void AudibleClock::correct(std::int64_t nanos, double measured) noexcept {
    if (parked_ && measured <= line_.floor) return;
    const auto expected = line_.at(nanos);
    const auto error = measured - expected;
    if (parked_ || std::abs(error) > anchorBeyondSeconds * rate_) {
        anchor(nanos, measured, rate_);
        return;
    }
    const auto share = corrections_ < quickCorrections ? quickShare : slowShare;
    if (corrections_ < quickCorrections) ++corrections_;
    const auto bend = std::clamp(share * error / (stepSeconds * rate_), -steepest, steepest);
    publish({nanos, expected, rate_ * (1 + bend), line_.floor});
}

void AudibleClock::publish(const Line& line) noexcept {
    line_ = line;
    const auto next = latest_.load(std::memory_order_relaxed) + 1;
    auto& slot = slots_[next % slotCount];
    slot.nanos.store(line.nanos, std::memory_order_release);
    slot.sample.store(line.sample, std::memory_order_release);
    slot.perSecond.store(line.perSecond, std::memory_order_release);
    slot.floor.store(line.floor, std::memory_order_release);
    latest_.store(next, std::memory_order_release);
}

AudibleClock::Line AudibleClock::read() const noexcept {
    for (;;) {
        const auto before = latest_.load(std::memory_order_acquire);
        const auto& slot = slots_[before % slotCount];
        const Line copy{
            slot.nanos.load(std::memory_order_acquire), slot.sample.load(std::memory_order_acquire),
            slot.perSecond.load(std::memory_order_acquire), slot.floor.load(std::memory_order_acquire)};
        const auto after = latest_.load(std::memory_order_acquire);
        if (after - before + 1 < slotCount) return copy;
    }
}

double AudibleClock::at(std::int64_t nanos) const noexcept { return read().at(nanos); }

} // namespace piolo::device
