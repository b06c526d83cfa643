// SPDX-License-Identifier: GPL-3.0-or-later
// A passage's notes with exact times, so that players can hear them before they play.
#pragma once

#include "core/passage/passage.h"
#include "engine/drill/drill_plan.h"

#include <cstdint>
#include <type_traits>
#include <vector>

namespace piolo::engine {

/// A moment of a playback, measured from its first sample: exactly `count` times 1/`perBeat` of a beat.
/// perBeat is below 2^24, count below 2^52. Real-time-safe.
struct PlaybackMoment {
    std::uint64_t count = 0;
    std::uint32_t perBeat = 1;
    bool operator==(const PlaybackMoment&) const = default;
};

/// A note as it sounds: ties joined, shortened by its articulation.
struct PlaybackNote {
    PlaybackMoment onset;
    PlaybackMoment end;
    std::uint8_t key = 60; ///< MIDI number of the sounding note
    bool accent = false;
};
static_assert(std::is_trivially_copyable_v<PlaybackNote>);

/// One pass through a passage: count-in, pick-up, bars, landing note, at plan.standing.tempo.
struct PlaybackScore {
    DrillPlan plan;
    bool click = true;               ///< false: only the count-in clicks
    bool cue = false;                ///< the cue for a climb sounds at its beginning
    std::vector<PlaybackNote> notes; ///< in order of onset; at most Passage::mostNotes
};

/// The share of its length for which a note sounds. Common practice, no source: half for a staccato note,
/// seven eighths for a note that is neither slurred to the next nor tenuto, all of it for others.
inline constexpr Fraction staccatoShare{1, 2};
inline constexpr Fraction tonguedShare{7, 8};

/// The playback of a passage at `tempo`, with notes at the pulses of its click: swung if they are, waiting
/// where they wait. Notes that begin after the end are left out, and longer ones end with it; the landing
/// note ends with the landing beat. Empty for a passage without notes and for an open-ended one. Moments
/// whose denominator exceeds 2^24 are rounded to the nearest with 2^24. Not real-time-safe.
[[nodiscard]] PlaybackScore playbackOf(const Passage& passage, Tempo tempo);

} // namespace piolo::engine
