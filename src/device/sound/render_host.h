// SPDX-License-Identifier: GPL-3.0-or-later
// Holds the renderer and the state of its use: who may render, how much was rendered, what is audible.
#pragma once

#include "device/sound/audible_clock.h"
#include "device/sound/render_ownership.h"
#include "engine/queue/renderer.h"

#include <memory>
#include <optional>
#include <span>

namespace piolo::device {

/// Shared by all threads that deal with sound; an abandoned thread keeps it alive. Only the holder of the
/// render ownership touches the renderer.
class RenderHost {
public:
    /// The longest block passed to one render call, in frames.
    static constexpr int maxBlock = 4096;

    explicit RenderHost(std::shared_ptr<engine::Renderer> renderer);

    [[nodiscard]] RenderOwnership& gate() noexcept { return ownership_; }
    static constexpr std::int32_t usualRate = 48'000;
    /// Claims the render ownership for audible output, waits until the previous holder has left, prepares the
    /// renderer if the rate has changed, and parks the clock. False if a later number has claimed the
    /// ownership meanwhile. Not real-time-safe.
    bool take(RenderOwnership::Number number, std::int32_t rate);
    /// The same for output that is not audible, at the previous rate, which it returns. Nothing if a later
    /// number has claimed the ownership meanwhile.
    std::optional<std::int32_t> takeSilently(RenderOwnership::Number number);
    /// Fills `out` (any length). With sound, and returns true, if `number` holds the ownership; otherwise
    /// with silence, and returns false. Real-time-safe.
    bool render(RenderOwnership::Number number, std::span<float> out) noexcept;
    /// Called by `number`: `backlog` rendered frames are not audible yet at `nanos`.
    void measure(RenderOwnership::Number number, std::int64_t nanos, double backlog) noexcept;
    /// Called by `number`, which paces itself: the next rendered sample becomes audible at `nanos`, the
    /// following ones at its rate.
    void pace(RenderOwnership::Number number, std::int64_t nanos) noexcept;
    /// Called by `number` after an underrun of the device: the clock stops until sound is audible again.
    void ranDry(RenderOwnership::Number number, std::int64_t nanos) noexcept;

    /// Any thread, real-time-safe. The number of samples rendered since the first take().
    [[nodiscard]] std::uint64_t rendered() const noexcept {
        return rendered_.load(std::memory_order_acquire);
    }
    /// Any thread, real-time-safe. The sample audible at `nanos`; never more than rendered().
    [[nodiscard]] std::uint64_t audibleAt(std::int64_t nanos) const noexcept;

private:
    bool claim(RenderOwnership::Number number, std::int32_t rate, bool heard);

    std::shared_ptr<engine::Renderer> renderer_;
    RenderOwnership ownership_;
    AudibleClock clock_;
    std::atomic<std::uint64_t> rendered_{0};
    std::int32_t rate_ = 0; // only for the holder of the ownership
};

} // namespace piolo::device
