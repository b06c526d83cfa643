// SPDX-License-Identifier: GPL-3.0-or-later
// A renderer that notices when two threads are inside it.
#pragma once

#include "engine/queue/renderer.h"

#include <algorithm>
#include <atomic>
#include <vector>

namespace piolo::device {

/// Renders ones. Its plain members are deliberately written without a lock, so that the thread sanitizer sees
/// two concurrent renderers.
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

    bool isHeard = true;      // written only by the holder of the render ownership
    std::vector<int> rates;   // written only by the holder of the render ownership
    std::uint64_t frames = 0; // written only by the holder of the render ownership
    bool tooLong = false;     // written only by the holder of the render ownership
    int longest = 0;          // written only by the holder of the render ownership
    std::atomic<int> overlaps{0};

private:
    void enter() noexcept {
        if (inside_.fetch_add(1) != 0) ++overlaps;
    }
    void leave() noexcept { inside_.fetch_sub(1); }
    std::atomic<int> inside_{0};
};

} // namespace piolo::device
