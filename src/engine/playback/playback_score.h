// SPDX-License-Identifier: GPL-3.0-or-later
// A passage's notes laid out in time, for the player to hear before playing them.
#pragma once

#include "core/passage/passage.h"
#include "engine/drill/drill_plan.h"

#include <cstdint>
#include <type_traits>
#include <vector>

namespace piolo::engine {

/// A moment of a playback, from its first sample: `count` of `perBeat` parts of a beat, exactly. perBeat is
/// below 2^24, count below 2^52. Real-time-safe.
struct PlaybackMoment {
    std::uint64_t count = 0;
    std::uint32_t perBeat = 1;
    bool operator==(const PlaybackMoment&) const = default;
};

/// A note as it sounds: ties joined, shortened as it is articulated.
struct PlaybackNote {
    PlaybackMoment onset;
    PlaybackMoment end;
    std::uint8_t key = 60; ///< MIDI number of what sounds
    bool accent = false;
};
static_assert(std::is_trivially_copyable_v<PlaybackNote>);

/// One pass through a passage: count-in, pick-up, bars, landing note, at plan.standing.tempo.
struct PlaybackScore {
    DrillPlan plan;
    bool click = true;               ///< false: only the count-in clicks
    std::vector<PlaybackNote> notes; ///< in the order of their onsets; at most Passage::mostNotes
};

/// How much of its length a note sounds. Common practice, no source: a staccato note half, a note that is
/// neither slurred to the next nor tenuto seven eighths, all others the whole.
inline constexpr Fraction staccatoShare{1, 2};
inline constexpr Fraction tonguedShare{7, 8};

/// The playback of a passage at `tempo`: at the pulses of its click, swung where they are, waiting where they
/// wait. What begins after its end is left out and what lasts longer ends with it; of a landing note, with
/// the landing beat. A passage without notes, or open-ended, has none. Moments whose parts of a beat pass
/// 2^24 are rounded to the nearest of 2^24. Not real-time-safe.
[[nodiscard]] PlaybackScore playbackOf(const Passage& passage, Tempo tempo);

} // namespace piolo::engine
