// SPDX-License-Identifier: GPL-3.0-or-later
// The tones that announce a turn: as many as its place in the set, then silence until the count-in.
#pragma once

#include "engine/drill/turn.h"
#include "engine/queue/renderer.h"

#include <cstdint>
#include <limits>

namespace piolo::engine {

/// Milliseconds. A tone lasts 200 (click_table.cpp), so the last of four ends 900 before the count-in.
struct TurnTiming {
    static constexpr std::int32_t quiet = 1000;   ///< after another turn, before the first tone
    static constexpr std::int32_t apart = 300;    ///< from one tone to the next
    static constexpr std::int32_t countIn = 2000; ///< from the first tone to the count-in
};

/// Real-time-safe.
class TurnTones {
public:
    static constexpr std::uint64_t never = std::numeric_limits<std::uint64_t>::max();

    /// From `sample` on; no tones for a turn without a place. Returns the sample of the count-in.
    std::uint64_t begin(const Turn& turn, std::uint64_t sample, SampleRate rate) noexcept;
    void clear() noexcept { left_ = 0; }
    [[nodiscard]] std::uint64_t nextSample() const noexcept { return left_ > 0 ? next_ : never; }
    /// True if a tone begins now, which is then done.
    bool take(std::uint64_t now) noexcept;

private:
    std::uint64_t next_ = 0;
    std::uint64_t apart_ = 0;
    std::int32_t left_ = 0;
};

} // namespace piolo::engine
