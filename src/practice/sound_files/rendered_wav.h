// SPDX-License-Identifier: GPL-3.0-or-later
// Writes a renderer's sound to a WAV file.
#pragma once

#include "core/base/result.h"
#include "engine/queue/renderer.h"

#include <cstdint>
#include <string>

namespace piolo::practice {

/// The block size; prepare renderers for this many frames.
inline constexpr int wavBlockFrames = 65'536;

/// Renders `frames` frames in blocks, never all in memory, from a renderer that is prepared. A termination
/// signal leaves no partial file. Faults as files::WavWriter.
Done writeRenderedWav(const std::string& path, engine::Renderer& renderer, engine::SampleRate rate,
                      std::uint64_t frames);

} // namespace piolo::practice
