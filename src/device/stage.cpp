// SPDX-License-Identifier: GPL-3.0-or-later
#include "device/stage.h"

#include <algorithm>
#include <chrono>
#include <thread>
#include <utility>

namespace piolo::device {

Stage::Stage(std::shared_ptr<engine::Renderer> renderer) : renderer_{std::move(renderer)} {}

bool Stage::take(Gate::Number number, std::int32_t rate) { return claim(number, rate, true); }

std::optional<std::int32_t> Stage::takeSilently(Gate::Number number) {
    if (!claim(number, 0, false)) return std::nullopt;
    const Turn turn{gate_, number};
    return turn ? std::optional{rate_} : std::nullopt;
}

/// `rate` 0: the one before.
bool Stage::claim(Gate::Number number, std::int32_t rate, bool heard) {
    if (!gate_.claim(number)) return false;
    for (;;) {
        if (const Turn turn{gate_, number}) {
            if (rate == 0) rate = rate_ == 0 ? usualRate : rate_;
            if (rate_ != rate) renderer_->prepare(engine::SampleRate{rate}, maxBlock);
            rate_ = rate;
            renderer_->setHeard(heard);
            clock_.park(static_cast<double>(rendered()), rate);
            return true;
        }
        if (!gate_.holds(number)) return false;
        std::this_thread::sleep_for(std::chrono::milliseconds{1});
    }
}

bool Stage::render(Gate::Number number, std::span<float> out) noexcept {
    const Turn turn{gate_, number};
    if (!turn) {
        std::fill(out.begin(), out.end(), 0.0F);
        return false;
    }
    for (auto rest = out; !rest.empty();) {
        const auto block = rest.first(std::min<std::size_t>(rest.size(), maxBlock));
        renderer_->render(block);
        rest = rest.subspan(block.size());
    }
    rendered_.fetch_add(out.size(), std::memory_order_release);
    return true;
}

void Stage::measure(Gate::Number number, std::int64_t nanos, double backlog) noexcept {
    if (const Turn turn{gate_, number}) clock_.correct(nanos, static_cast<double>(rendered()) - backlog);
}

void Stage::pace(Gate::Number number, std::int64_t nanos) noexcept {
    if (const Turn turn{gate_, number}) clock_.anchor(nanos, static_cast<double>(rendered()), rate_);
}

void Stage::ranDry(Gate::Number number, std::int64_t nanos) noexcept {
    if (const Turn turn{gate_, number})
        clock_.park(std::min(clock_.at(nanos), static_cast<double>(rendered())), rate_);
}

std::uint64_t Stage::audibleAt(std::int64_t nanos) const noexcept {
    const auto line = std::max(0.0, clock_.at(nanos));
    const auto limit = rendered();
    return line >= static_cast<double>(limit) ? limit : static_cast<std::uint64_t>(line);
}

} // namespace piolo::device
