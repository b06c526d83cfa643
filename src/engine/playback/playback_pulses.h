// SPDX-License-Identifier: GPL-3.0-or-later
// The pulses of a playback, one after the other: those of the drill's count-in, of one run, and of its
// landing note.
#pragma once

#include "engine/click/click_choice.h"
#include "engine/time/section.h"

#include <array>
#include <cstddef>
#include <cstdint>

namespace piolo::engine {

/// Ticks are counted from the beginning of the playback. Real-time-safe.
class PlaybackPulses {
public:
    PlaybackPulses() = default;
    /// `plan` must be in range. Without `click`, only the count-in sounds.
    PlaybackPulses(const DrillPlan& plan, bool click) noexcept;

    [[nodiscard]] bool atEnd() const noexcept { return tick_ > last_; }
    // Of the current pulse. Not at the end.
    [[nodiscard]] std::uint64_t tick() const noexcept { return tick_; }
    [[nodiscard]] BarPlace place() const noexcept { return present().placeOf(tick_, measure_); }
    [[nodiscard]] Click click() const noexcept;
    /// During a wait, only beats are sent.
    [[nodiscard]] bool isSent() const noexcept;
    void advance() noexcept { find(tick_ + 1); }

    [[nodiscard]] Phase phase() const noexcept { return present().phase; }
    [[nodiscard]] std::uint64_t perBeat() const noexcept { return measure_.perBeat; }
    /// The tick at which the playback ends, including the landing beat.
    [[nodiscard]] std::uint64_t end() const noexcept { return sections_[1].end; }

private:
    void find(std::uint64_t from) noexcept;
    [[nodiscard]] bool counting() const noexcept { return section_ == 0; }
    [[nodiscard]] const Section& present() const noexcept { return sections_[section_]; }

    DrillMeasure measure_;
    ClickChoice choice_;
    Layer landing_ = Layer::downbeat;
    std::uint32_t groupStarts_ = 1;
    bool click_ = true;
    std::array<Section, 2> sections_{}; // the count-in and the run
    std::size_t section_ = 1;
    std::uint64_t tick_ = 1;
    std::uint64_t last_ = 0;
};

} // namespace piolo::engine
