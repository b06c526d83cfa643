// SPDX-License-Identifier: GPL-3.0-or-later
// Time counted in rendered samples, as a wall clock and as a sound device.
#pragma once

#include "journal/folder/ports.h"
#include "practice/ports/sound_port.h"

#include <atomic>
#include <memory>
#include <utility>

namespace piolo::practice {

/// A wall clock that starts at a given time and advances with the sound. Any thread.
class VirtualTime final : public journal::Clock {
public:
    VirtualTime(Timestamp start, std::int32_t rate) : start_(start), rate_(rate) {}

    Timestamp now() override { return {start_.utcMillis + nanos() / 1'000'000, start_.offsetMinutes}; }
    void advanceTo(std::uint64_t samples) { samples_ = static_cast<std::int64_t>(samples); }
    [[nodiscard]] std::int64_t nanos() const { return nanosOf(static_cast<std::uint64_t>(samples_)); }
    /// The first nanosecond at which that sample is reached: samplesAt() returns the sample again.
    [[nodiscard]] std::int64_t nanosOf(std::uint64_t sample) const {
        return (static_cast<std::int64_t>(sample) * 1'000'000'000 + rate_ - 1) / rate_;
    }
    [[nodiscard]] std::int64_t samplesAt(std::int64_t nanos) const { return nanos * rate_ / 1'000'000'000; }

private:
    Timestamp start_;
    std::int64_t rate_;
    std::atomic<std::int64_t> samples_{0};
};

/// A sound device that plays what is rendered at once, to nobody.
class VirtualSound final : public SoundPort {
public:
    explicit VirtualSound(std::shared_ptr<VirtualTime> time) : time_(std::move(time)) {}

    void start(const std::string&) override {}
    void choose(const std::string&) override {}
    void setOffsetMillis(int) override {}
    [[nodiscard]] std::vector<SoundOutput> outputs() const override { return {}; }
    [[nodiscard]] SoundState state() const override { return {SoundState::Kind::silent, {}, 0, 0}; }
    void onChange(std::function<void()>) override {}
    [[nodiscard]] std::int64_t nowNanos() const override { return time_->nanos(); }
    [[nodiscard]] std::uint64_t audibleAt(std::int64_t nanos) const override {
        return static_cast<std::uint64_t>(time_->samplesAt(nanos));
    }

private:
    std::shared_ptr<VirtualTime> time_;
};

} // namespace piolo::practice
