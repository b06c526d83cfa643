// SPDX-License-Identifier: GPL-3.0-or-later
// A short bar that lets a player hear how the click is set.
#pragma once

#include "engine/click/mix.h"
#include "engine/playback/playback_score.h"

namespace piolo::practice {

/// One bar of 2+2 in eighths at 120: downbeat, group, beats and subdivisions. For the count-in, a bar of it
/// comes first; for the notes, a note sounds on each beat; for the cues, there is a cue and no bar. Any
/// thread; allocates memory.
[[nodiscard]] engine::PlaybackScore testBar(engine::Layer layer);

} // namespace piolo::practice
