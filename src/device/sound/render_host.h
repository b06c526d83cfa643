// SPDX-License-Identifier: GPL-3.0-or-later
// The renderer and all that must be known about its use: who may render, how much was, what is audible.
#pragma once

#include "device/sound/audible_clock.h"
#include "device/sound/render_ownership.h"
#include "engine/queue/renderer.h"

#include <memory>
#include <optional>
#include <span>

namespace piolo::device {

/// Shared by every thread that has to do with sound; an abandoned thread keeps it alive. The renderer is
/// touched by the gate's holder alone.
class RenderHost {
public:
    /// Longest block a render call is given, in frames.
    static constexpr int maxBlock = 4096;

    explicit RenderHost(std::shared_ptr<engine::Renderer> renderer);

    [[nodiscard]] RenderOwnership& gate() noexcept { return ownership_; }
    static constexpr std::int32_t usualRate = 48'000;
    /// Claims the gate for what is heard, waits until the one before has left, prepares the renderer if the
    /// rate is a new one and parks the clock. False when a later number has claimed meanwhile. Not
    /// real-time-safe.
    bool take(RenderOwnership::Number number, std::int32_t rate);
    /// The same for what is not heard, at the rate of the one before, which is returned. Nothing when a later
    /// number has claimed meanwhile.
    std::optional<std::int32_t> takeSilently(RenderOwnership::Number number);
    /// Fills `out` (any length) with sound and true, or with silence and false when it is not `number`'s
    /// turn. Real-time-safe.
    bool render(RenderOwnership::Number number, std::span<float> out) noexcept;
    /// `number` says that `backlog` frames of what was rendered are not audible yet at `nanos`.
    void measure(RenderOwnership::Number number, std::int64_t nanos, double backlog) noexcept;
    /// `number` paces itself: what is rendered next becomes audible at `nanos`, and so on at its rate.
    void pace(RenderOwnership::Number number, std::int64_t nanos) noexcept;
    /// `number` says that the device ran dry: the clock stands still until it is heard again.
    void ranDry(RenderOwnership::Number number, std::int64_t nanos) noexcept;

    /// Any thread, real-time-safe: samples rendered since the first take().
    [[nodiscard]] std::uint64_t rendered() const noexcept {
        return rendered_.load(std::memory_order_acquire);
    }
    /// Any thread, real-time-safe: the sample audible at `nanos`; never more than rendered().
    [[nodiscard]] std::uint64_t audibleAt(std::int64_t nanos) const noexcept;

private:
    bool claim(RenderOwnership::Number number, std::int32_t rate, bool heard);

    std::shared_ptr<engine::Renderer> renderer_;
    RenderOwnership ownership_;
    AudibleClock clock_;
    std::atomic<std::uint64_t> rendered_{0};
    std::int32_t rate_ = 0; // the gate's holder's
};

} // namespace piolo::device
