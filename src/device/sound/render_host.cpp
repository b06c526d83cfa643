// SPDX-License-Identifier: GPL-3.0-or-later
#include "device/sound/render_host.h"

#include "device/sound/wide_registers.h"

#include <algorithm>
#include <chrono>
#include <thread>
#include <utility>

namespace piolo::device {

RenderHost::RenderHost(std::shared_ptr<engine::Renderer> renderer) : renderer_{std::move(renderer)} {}

bool RenderHost::take(RenderOwnership::Number number, std::int32_t rate) { return claim(number, rate, true); }

std::optional<std::int32_t> RenderHost::takeSilently(RenderOwnership::Number number) {
    if (!claim(number, 0, false)) return std::nullopt;
    const Turn turn{ownership_, number};
    return turn ? std::optional{rate_} : std::nullopt;
}

/// `rate` 0 keeps the previous rate.
bool RenderHost::claim(RenderOwnership::Number number, std::int32_t rate, bool heard) {
    if (!ownership_.claim(number)) return false;
    clearWideRegisters();
    for (;;) {
        if (const Turn turn{ownership_, number}) {
            if (rate == 0) rate = rate_ == 0 ? usualRate : rate_;
            if (rate_ != rate) renderer_->prepare(engine::SampleRate{rate}, maxBlock);
            rate_ = rate;
            renderer_->setHeard(heard);
            clock_.park(static_cast<double>(rendered()), rate);
            return true;
        }
        if (!ownership_.holds(number)) return false;
        std::this_thread::sleep_for(std::chrono::milliseconds{1});
    }
}

bool RenderHost::render(RenderOwnership::Number number, std::span<float> out) noexcept {
    const Turn turn{ownership_, number};
    if (!turn) {
        std::fill(out.begin(), out.end(), 0.0F);
        return false;
    }
    clearWideRegisters();
    for (auto rest = out; !rest.empty();) {
        const auto block = rest.first(std::min<std::size_t>(rest.size(), maxBlock));
        renderer_->render(block);
        rest = rest.subspan(block.size());
    }
    rendered_.fetch_add(out.size(), std::memory_order_release);
    return true;
}

void RenderHost::measure(RenderOwnership::Number number, std::int64_t nanos, double backlog) noexcept {
    if (const Turn turn{ownership_, number}) clock_.correct(nanos, static_cast<double>(rendered()) - backlog);
}

void RenderHost::pace(RenderOwnership::Number number, std::int64_t nanos) noexcept {
    if (const Turn turn{ownership_, number}) clock_.anchor(nanos, static_cast<double>(rendered()), rate_);
}

void RenderHost::ranDry(RenderOwnership::Number number, std::int64_t nanos) noexcept {
    if (const Turn turn{ownership_, number})
        clock_.park(std::min(clock_.at(nanos), static_cast<double>(rendered())), rate_);
}

std::uint64_t RenderHost::audibleAt(std::int64_t nanos) const noexcept {
    const auto line = std::max(0.0, clock_.at(nanos));
    const auto limit = rendered();
    return line >= static_cast<double>(limit) ? limit : static_cast<std::uint64_t>(line);
}

} // namespace piolo::device
