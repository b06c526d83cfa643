// SPDX-License-Identifier: GPL-3.0-or-later
// A renderer that knows when two threads are inside it.
#pragma once

#include "engine/queue/renderer.h"

#include <algorithm>
#include <atomic>
#include <vector>

namespace piolo::device {

/// Renders ones. Its plain members are written without a lock on purpose: the thread sanitizer sees a second
/// renderer at once.
class TestRenderer final : public engine::Renderer {
public:
    void prepare(engine::SampleRate rate, int maxBlock) override {
        enter();
        rates.push_back(rate.hertz);
        longest = maxBlock;
        leave();
    }
    void render(std::span<float> out) noexcept override {
        enter();
        std::fill(out.begin(), out.end(), 1.0F);
        tooLong = tooLong || out.size() > static_cast<std::size_t>(longest);
        frames += out.size();
        leave();
    }

    void setHeard(bool heard) noexcept override {
        enter();
        isHeard = heard;
        leave();
    }

    bool isHeard = true;      // by whoever has the gate
    std::vector<int> rates;   // by whoever has the gate
    std::uint64_t frames = 0; // by whoever has the gate
    bool tooLong = false;     // by whoever has the gate
    int longest = 0;          // by whoever has the gate
    std::atomic<int> overlaps{0};

private:
    void enter() noexcept {
        if (inside_.fetch_add(1) != 0) ++overlaps;
    }
    void leave() noexcept { inside_.fetch_sub(1); }
    std::atomic<int> inside_{0};
};

} // namespace piolo::device
