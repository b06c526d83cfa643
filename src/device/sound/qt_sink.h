// SPDX-License-Identifier: GPL-3.0-or-later
// The sink of Qt Multimedia.
#pragma once

#include "device/sound/sink.h"
#include "device/sound/sound_out.h"

#include <memory>
#include <vector>

namespace piolo::device {

/// A QAudioSink in pull mode. Sound thread only, like every Sink.
[[nodiscard]] std::unique_ptr<Sink> makeQtSink();

/// The outputs that Qt knows now; empty while no sound server answers. Sound thread only: the first call
/// connects to the server.
[[nodiscard]] std::vector<practice::SoundOutput> qtOutputs();

} // namespace piolo::device
