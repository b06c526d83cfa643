// SPDX-License-Identifier: GPL-3.0-or-later
// Cues waiting to sound at a given sample.
#pragma once

#include "engine/click/click_voice.h"

#include <array>
#include <cstddef>
#include <cstdint>
#include <limits>
#include <optional>

namespace piolo::engine {

/// Has room for the most cues of one gap. Real-time-safe.
class CueQueue {
public:
    void clear() noexcept { count_ = next_ = 0; }
    /// Add in order of samples; when full, further cues are dropped.
    void add(std::uint64_t sample, Cue cue) noexcept {
        if (count_ < entries_.size()) entries_[count_++] = {sample, cue};
    }
    [[nodiscard]] std::uint64_t nextSample() const noexcept {
        return next_ < count_ ? entries_[next_].sample : std::numeric_limits<std::uint64_t>::max();
    }
    /// The next cue, once its sample is reached.
    std::optional<Cue> take(std::uint64_t now) noexcept {
        if (nextSample() > now) return std::nullopt;
        return entries_[next_++].cue;
    }

private:
    struct Entry {
        std::uint64_t sample = 0;
        Cue cue = Cue::rise;
    };
    std::array<Entry, 4> entries_{};
    std::size_t count_ = 0;
    std::size_t next_ = 0;
};

} // namespace piolo::engine
