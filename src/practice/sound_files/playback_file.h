// SPDX-License-Identifier: GPL-3.0-or-later
// Writes the notes of a passage as a WAV or Standard MIDI File.
#pragma once

#include "core/base/result.h"
#include "core/time/meter.h"
#include "engine/click/mix.h"
#include "engine/playback/playback_score.h"
#include "engine/queue/renderer.h"

#include <string>

namespace piolo::practice {

/// Faults as files::WavWriter.
Done writePlaybackWav(const std::string& path, const engine::PlaybackScore& score, const engine::Mix& mix,
                      engine::SampleRate rate);
/// The same onsets as the WAV, in ticks: exact if the file's ticks can be fine enough, otherwise rounded;
/// note ends are always rounded. Faults as files::writeMidi().
Done writePlaybackMidi(const std::string& path, const engine::PlaybackScore& score, const Meter& meter);

} // namespace piolo::practice
