// SPDX-License-Identifier: GPL-3.0-or-later
// Events from the engine: plain values with their sample index, in a fixed queue.
#pragma once

#include "core/rule/rule.h"
#include "engine/click/click_plan.h"
#include "engine/click/mix.h"

#include <cstdint>
#include <type_traits>

namespace piolo::engine {

/// Why the drill paused.
enum class Pause : std::uint8_t { noKey, threeMisses, belowStart };

/// Why a run was void.
enum class VoidReason : std::uint8_t { none, stopped, tempoChanged, soundLost };

/// The value of `bar` where there is no bar.
inline constexpr std::int32_t noBar = -2;

/// The current phase of the drill.
enum class Phase : std::uint8_t { idle, gap, countIn, run, paused };

struct Event {
    enum class Kind : std::uint8_t {
        started,      ///< the drill began
        pulse,        ///< a pulse: layer, bar, beat, part, phase; whether it `sounds`, or `waits`
        runBegan,     ///< the first note of a run; `run` counts from 1
        runEnded,     ///< mark, standing before and after; never sent for a run that was rendered but not
                      ///< heard yet when a late miss overtook it. For a missed run: bar and beat of the
                      ///< (first) press
        lateMiss,     ///< run `run`, reported as clean before, was missed after all; bar and beat if the
                      ///< press was made inside it. `before`: the standing before that run; `after`: the
                      ///< current standing. If the run's turn is over, both are the standing, unchanged
        missMarked,   ///< playing on: a press inside the run, at bar and beat; the run ends later
        withdrawn,    ///< press `press` was withdrawn; `run`: the current run if a mark of it was withdrawn,
                      ///< otherwise 0
        tempoMoved,   ///< the standing changed to `after`
        adopted,      ///< an adopt command was carried out
        adoptRefused, ///< an adopt command came too late: fold again
        paused,       ///< `pause` has the reason
        resumed,
        stopped,       ///< silence from here on; `turnOver`: until the next turn of a set
        playbackBegan, ///< playback number `run` begins with its count-in; its pulses have no run
        playbackEnded, ///< at its end, or because it was stopped
        clickBegan,    ///< click number `run` without a passage, by `click`; its pulses have no run
        clickChanged,  ///< from here on it is by `click`
        clickEnded,    ///< because it was ended, or something else began, or it was refused
    };
    Kind kind = Kind::stopped;
    /// When it sounds, in the engine's own count of rendered samples. A run ended by a key press ends with
    /// the next pulse; that event is sent at once, with a sample up to one pulse ahead of rendered().
    std::uint64_t sample = 0;
    std::uint64_t run = 0;
    std::uint64_t press = 0;      ///< for a missed run, lateMiss and withdrawn: the press that caused it
    std::uint64_t runsEnded = 0;  ///< runEnded and lateMiss events sent so far, including this one
    Tempo tempo = Tempo::bpm(60); ///< of the pulse or of the run
    Standing before;
    Standing after;
    Mark mark = Mark::clean;
    VoidReason voidReason = VoidReason::none;
    Pause pause = Pause::noKey;
    Phase phase = Phase::idle;
    Layer layer = Layer::beat;
    std::int32_t bar = noBar;    ///< of the run, counted from 0; a pick-up is bar -1; in a count-in also from
                                 ///< 0; or noBar
    std::int32_t beat = 0;       ///< counted from 0
    std::int32_t part = 0;       ///< pulse inside the beat, counted from 0
    std::int32_t thousandth = 0; ///< for a miss: the elapsed part of its beat, 0…999
    bool sounds = true;          ///< false: the click pattern leaves this pulse out
    bool waits = false;          ///< a beat of breath before `bar` and `beat`: nothing sounds, the bars do
                                 ///< not advance
    bool fullStreak = false;
    bool secure = false;
    bool apart = false;    ///< the run does not change the standing
    bool turnOver = false; ///< it stopped because this passage's turn is over
    ClickPlan click;       ///< for clickBegan and clickChanged
};
static_assert(std::is_trivially_copyable_v<Event>);

} // namespace piolo::engine
