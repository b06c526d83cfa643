// SPDX-License-Identifier: GPL-3.0-or-later
// How each click is made: a few decaying tones, written into a table once per rate.
#pragma once

#include "engine/click/click_voice.h"
#include "engine/click/mix.h"
#include "engine/queue/renderer.h"

#include <vector>

namespace piolo::engine {

/// The kinds of click in one voice: the five layers of the beat, and the first beat of a count-in bar.
enum class Stroke : std::uint8_t { downbeat, group, beat, subdivision, countIn, countInBar };
inline constexpr int strokeCount = 6;

/// One click of a voice. Short (at most 60 ms), starts and ends in silence, peak below 1. `impulse` is a
/// single sample. Allocates memory.
[[nodiscard]] std::vector<float> clickTable(Voice voice, Stroke stroke, SampleRate rate);
/// One cue, at most 300 ms long. Allocates memory.
[[nodiscard]] std::vector<float> cueTable(Cue cue, SampleRate rate);

} // namespace piolo::engine
