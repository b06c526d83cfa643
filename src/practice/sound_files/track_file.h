// SPDX-License-Identifier: GPL-3.0-or-later
// Writes a click track as a WAV or Standard MIDI File.
#pragma once

#include "core/base/result.h"
#include "engine/click/click_track.h"

#include <string>

namespace piolo::practice {

/// Renders in blocks, never all in memory. Faults as files::WavWriter.
Done writeTrackWav(const std::string& path, const engine::ClickTrack& track, engine::SampleRate rate);
/// The same onsets as the WAV at that rate, in ticks. Faults as files::writeMidi().
Done writeTrackMidi(const std::string& path, const engine::ClickTrack& track, engine::SampleRate rate);

} // namespace piolo::practice
