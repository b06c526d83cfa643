// SPDX-License-Identifier: GPL-3.0-or-later
// What the engine tells: facts with their sample index, plain values through a fixed queue.
#pragma once

#include "core/rule/rule.h"
#include "engine/click/mix.h"

#include <cstdint>
#include <type_traits>

namespace piolo::engine {

/// Why the drill paused.
enum class Pause : std::uint8_t { noKey, threeMisses, belowStart };

/// Why a run was void.
enum class VoidReason : std::uint8_t { none, stopped, tempoChanged, soundLost };

/// Stands for a bar where there is none.
inline constexpr std::int32_t noBar = -2;

/// Where the drill is.
enum class Phase : std::uint8_t { idle, gap, countIn, run, paused };

struct Event {
    enum class Kind : std::uint8_t {
        started,      ///< the drill began
        pulse,        ///< a pulse: layer, bar, beat, part, phase; whether it `sounds`, or `waits`
        runBegan,     ///< the first note of a run; `run` counts from 1
        runEnded,     ///< mark, standing before and after; never told for a run that was cancelled. Of a
                      ///< missed run: bar and beat of the (first) press
        runCancelled, ///< a run that had been rendered but not heard was overtaken by a late miss: it never
                      ///< was
        lateMiss,     ///< run `run`, told as clean before, was missed after all; bar and beat when the press
                      ///< was made inside it. `before`: as before that run; `after`: where it stands now
        missMarked,   ///< playing on: a press inside the run, at bar and beat; the run ends later
        withdrawn,    ///< press `press` was withdrawn; `run`: the present run, when a mark of it was, or 0
        tempoMoved,   ///< the standing changed: `after`
        adopted,      ///< an adopt was followed
        adoptRefused, ///< an adopt came too late: fold again
        paused,       ///< `pause` says why
        resumed,
        stopped,       ///< silence from here on
        playbackBegan, ///< playback number `run` is played, from its count-in; its pulses have no run
        playbackEnded, ///< by itself, or because it was stopped
    };
    Kind kind = Kind::stopped;
    /// When it sounds, in the engine's own count of rendered samples. A run ended by a key ends with the next
    /// pulse: that is told at once, with a sample up to one pulse ahead of rendered().
    std::uint64_t sample = 0;
    std::uint64_t run = 0;
    std::uint64_t press = 0;      ///< of a missed run, a lateMiss, a withdrawn: the press that made it
    std::uint64_t runsEnded = 0;  ///< runEnded and lateMiss events told so far, this one included
    Tempo tempo = Tempo::bpm(60); ///< of the pulse, or at which the run was played
    Standing before;
    Standing after;
    Mark mark = Mark::clean;
    VoidReason voidReason = VoidReason::none;
    Pause pause = Pause::noKey;
    Phase phase = Phase::idle;
    Layer layer = Layer::beat;
    std::int32_t bar = noBar;    ///< of the run from 0; a pick-up is bar -1; in a count-in from 0; or noBar
    std::int32_t beat = 0;       ///< from 0
    std::int32_t part = 0;       ///< pulse inside the beat, from 0
    std::int32_t thousandth = 0; ///< of a miss: how much of its beat had gone by, 0…999
    std::uint64_t beganAt = 0;   ///< of runEnded: the sample of the run's first note
    bool sounds = true;          ///< false: the click pattern leaves this pulse out
    bool waits = false;          ///< a beat of breath before `bar` and `beat`: nothing sounds, the bars stand
    bool fullStreak = false;
    bool secure = false;
    bool apart = false; ///< the run moves nothing
};
static_assert(std::is_trivially_copyable_v<Event>);

} // namespace piolo::engine
