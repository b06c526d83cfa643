// SPDX-License-Identifier: GPL-3.0-or-later
// A sound device in virtual time: it renders on request and is heard a little later.
#pragma once

#include "engine/drill/drill_engine.h"
#include "practice/ports/sound_port.h"

#include <algorithm>
#include <memory>
#include <vector>

namespace piolo::test {

class VirtualSound final : public practice::SoundPort {
public:
    static constexpr std::uint64_t rate = 48'000;
    static constexpr std::uint64_t latency = 4'800; // 100 ms between rendering and hearing

    explicit VirtualSound(std::shared_ptr<engine::DrillEngine> engine) : engine_(std::move(engine)) {
        engine_->prepare({static_cast<std::int32_t>(rate)}, 4096);
    }

    void start(const std::string& deviceId) override { state_.deviceName = deviceId; }
    void choose(const std::string& deviceId) override { state_.deviceName = deviceId; }
    void setOffsetMillis(int millis) override { offsetMillis_ = millis; }
    [[nodiscard]] std::vector<practice::SoundOutput> outputs() const override { return outputs_; }
    [[nodiscard]] practice::SoundState state() const override { return state_; }
    void onChange(std::function<void()> heard) override { heard_ = std::move(heard); }
    [[nodiscard]] std::int64_t nowNanos() const override { return nanosOf(engine_->rendered()); }
    [[nodiscard]] std::uint64_t audibleAt(std::int64_t nanos) const override {
        const auto sample = nanos * static_cast<std::int64_t>(rate / 1000) / 1'000'000;
        const auto late = static_cast<std::int64_t>(latency) + offsetMillis_ * std::int64_t{48};
        return static_cast<std::uint64_t>(std::max<std::int64_t>(0, sample - late));
    }

    [[nodiscard]] std::int64_t sleptNanos() const override { return slept_; }
    /// The machine is suspended and wakes up again.
    void sleep(int seconds) { slept_ += seconds * std::int64_t{1'000'000'000}; }

    /// Renders one block of 10 ms.
    void render() {
        std::vector<float> block(rate / 100);
        engine_->render(block);
    }
    void become(practice::SoundState::Kind kind) {
        state_.kind = kind;
        if (heard_) heard_();
    }
    void plugIn(const practice::SoundOutput& output) { outputs_.push_back(output); }
    void breakOff() { ++state_.underruns; }
    [[nodiscard]] static std::int64_t nanosOf(std::uint64_t sample) {
        return static_cast<std::int64_t>(sample * 1'000'000 / (rate / 1000));
    }

private:
    std::shared_ptr<engine::DrillEngine> engine_;
    std::function<void()> heard_;
    int offsetMillis_ = 0;
    std::int64_t slept_ = 0;
    std::vector<practice::SoundOutput> outputs_{{"hall", "Hall"}};
    practice::SoundState state_{practice::SoundState::Kind::playing, {}, rate, 0};
};

} // namespace piolo::test
