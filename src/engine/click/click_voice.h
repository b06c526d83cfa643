// SPDX-License-Identifier: GPL-3.0-or-later
// Clicks, sample by sample.
#pragma once

#include "engine/click/mix.h"
#include "engine/queue/renderer.h"

#include <cstdint>
#include <memory>
#include <span>

namespace piolo::engine {

/// Short tones that accompany the click: rising after a climb, falling after a drop, the announcement of the
/// run that would complete the streak, and one tone of the announcement of a turn.
enum class Cue : std::uint8_t { rise, fall, lastOfStreak, turn };

/// All clicks that may sound, rendered into tables in advance; each sounding click plays its table to the
/// end, whatever follows. The mix never exceeds ±1. Clicks are mixed in the order in which they were struck,
/// so the sum does not depend on how mix() is split into blocks.
class ClickBank {
public:
    ClickBank();
    ~ClickBank();
    /// Builds the tables of every voice and cue. Not real-time-safe.
    void prepare(SampleRate rate);
    /// Builds only the clicks of `voice`; all else is silent. Not real-time-safe.
    void prepareVoice(SampleRate rate, Voice voice);
    /// Uses the same tables as `other`; they are kept as long as either bank needs them. Not real-time-safe.
    void prepareLike(const ClickBank& other);
    /// Starts a click `offset` samples into the next mix() call. `barBegins` emphasises the first beat of a
    /// count-in bar; other layers ignore it. Real-time-safe.
    void strike(const Mix& mix, Layer layer, std::uint32_t offset, bool barBegins = false) noexcept;
    /// Starts a cue. Silent in the voice `impulse`. Real-time-safe.
    void cue(const Mix& mix, Cue cue, std::uint32_t offset) noexcept;
    /// Overwrites `out` with the mix. Real-time-safe.
    void mix(std::span<float> out) noexcept;

private:
    struct Tables;
    struct State;
    std::unique_ptr<State> state_;
};

} // namespace piolo::engine
