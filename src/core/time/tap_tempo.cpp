// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/time/tap_tempo.h"

#include <algorithm>

namespace piolo {

namespace {

constexpr std::int64_t nanosInMinute = 60'000'000'000;
constexpr std::size_t mostPairs = TapTempo::mostTaps * (TapTempo::mostTaps - 1) / 2;

/// The median over all pairs of taps of the time per beat between them: one tap at the wrong moment hardly
/// moves it (Theil and Sen's slope).
std::int64_t nanosPerBeat(std::span<const std::int64_t> taps) noexcept {
    std::array<std::int64_t, mostPairs> slopes{};
    std::size_t count = 0;
    for (std::size_t later = 1; later < taps.size(); ++later)
        for (std::size_t earlier = 0; earlier < later; ++earlier)
            slopes[count++] = (taps[later] - taps[earlier]) / static_cast<std::int64_t>(later - earlier);
    const auto found = std::span(slopes).first(count);
    std::ranges::sort(found);
    return (found[(count - 1) / 2] + found[count / 2]) / 2;
}

/// At least a fifth longer or shorter: no jitter of a steady hand.
bool isLonger(std::int64_t interval, std::int64_t usual) noexcept { return 5 * interval >= 6 * usual; }

} // namespace

void TapTempo::tap(std::int64_t nanos) noexcept {
    if (count_ > 0 && nanos <= moments_[count_ - 1]) return;
    if (count_ > 0 && nanos - moments_[count_ - 1] > longestPause) forget();
    if (count_ == mostTaps) keep(mostTaps - 1);
    moments_[count_++] = nanos;
    if (changed()) keep(3);
}

/// The last two intervals are both longer, or both shorter, than those before: after one late tap, the next
/// interval is short.
bool TapTempo::changed() const noexcept {
    if (count_ < 4) return false;
    const auto before = nanosPerBeat(std::span(moments_).first(count_ - 2));
    const auto first = moments_[count_ - 2] - moments_[count_ - 3];
    const auto second = moments_[count_ - 1] - moments_[count_ - 2];
    return (isLonger(first, before) && isLonger(second, before)) ||
           (isLonger(before, first) && isLonger(before, second));
}

void TapTempo::keep(std::size_t latest) noexcept {
    std::shift_left(moments_.begin(), moments_.begin() + static_cast<std::ptrdiff_t>(count_),
                    static_cast<std::ptrdiff_t>(count_ - latest));
    count_ = latest;
}

std::optional<Tempo> TapTempo::tempo() const noexcept {
    if (count_ < 2) return std::nullopt;
    const auto beat = std::max<std::int64_t>(1, nanosPerBeat(std::span(moments_).first(count_)));
    return Tempo::clampedThousandths((nanosInMinute + beat / 2) / beat * 1000);
}

} // namespace piolo
