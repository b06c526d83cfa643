// SPDX-License-Identifier: GPL-3.0-or-later
#include "device/sound/silent_clock.h"

#include "device/sound/sound_out.h"

#include <algorithm>
#include <array>
#include <chrono>
#include <utility>

namespace piolo::device {
namespace {

constexpr std::chrono::milliseconds nap{10};
// How far rendering is ahead of the audible position, as a fraction of a second, so that a late wake-up does
// not interrupt the beat.
constexpr std::int64_t leadsPerSecond = 25;
constexpr std::int64_t nanosInSecond = 1'000'000'000;

[[nodiscard]] std::int64_t framesIn(std::int64_t nanos, std::int64_t rate) {
    return nanos / nanosInSecond * rate + nanos % nanosInSecond * rate / nanosInSecond;
}

} // namespace

SilentClock::SilentClock(std::shared_ptr<RenderHost> host)
    : host_{std::move(host)}, number_{host_->gate().allot()} {
    // Claimed before anything else happens, so that no holder of an earlier number can get in between.
    host_->gate().claim(number_);
    thread_ = std::thread{[this] { run(); }};
}

SilentClock::~SilentClock() {
    {
        const std::lock_guard lock{mutex_};
        over_ = true;
    }
    wake_.notify_all();
    thread_.join();
}

bool SilentClock::sleep() {
    std::unique_lock lock{mutex_};
    return !wake_.wait_for(lock, nap, [this] { return over_; });
}

void SilentClock::run() {
    const auto taken = host_->takeSilently(number_);
    if (!taken) return;
    const std::int64_t rate = *taken;
    const auto lead = rate / leadsPerSecond;
    // After a longer sleep of the machine or the process, time continues from where it stopped.
    const auto longestCatchUp = rate;
    std::array<float, RenderHost::maxBlock> discarded{};
    auto began = monotonicNanos();
    std::int64_t done = 0;
    host_->pace(number_, began);
    do {
        auto due = framesIn(monotonicNanos() - began, rate) + lead - done;
        if (due > longestCatchUp) {
            began = monotonicNanos();
            done = 0;
            host_->pace(number_, began);
            due = lead;
        }
        for (; due > 0; due -= RenderHost::maxBlock) {
            const auto block = static_cast<std::size_t>(std::min<std::int64_t>(due, RenderHost::maxBlock));
            if (!host_->render(number_, std::span{discarded}.first(block))) return;
            done += static_cast<std::int64_t>(block);
        }
    } while (sleep());
}

} // namespace piolo::device
