// SPDX-License-Identifier: GPL-3.0-or-later
// Writes the model of a passage as a WAV or as a Standard MIDI File.
#pragma once

#include "core/meter.h"
#include "core/result.h"
#include "engine/mix.h"
#include "engine/model_score.h"
#include "engine/renderer.h"

#include <string>

namespace piolo::app {

/// Faults as files::WavWriter.
Done writeModelWav(const std::string& path, const engine::ModelScore& score, const engine::Mix& mix,
                   engine::SampleRate rate);
/// The onsets of the WAV, in ticks: exactly where the file's ticks can be divided so finely, else at the
/// nearest; ends of notes always at the nearest. Faults as files::writeMidi().
Done writeModelMidi(const std::string& path, const engine::ModelScore& score, const Meter& meter);

} // namespace piolo::app
