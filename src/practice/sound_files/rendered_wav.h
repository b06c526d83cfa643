// SPDX-License-Identifier: GPL-3.0-or-later
// A renderer's sound as a WAV file.
#pragma once

#include "core/base/result.h"
#include "engine/queue/renderer.h"

#include <cstdint>
#include <string>

namespace piolo::practice {

/// How much is rendered at once: what renderers are to be prepared for.
inline constexpr int wavBlockFrames = 65'536;

/// Renders so many frames in blocks, never the whole in memory, of a renderer that is prepared. A signal to
/// end leaves no half-written file. Faults as files::WavWriter.
Done writeRenderedWav(const std::string& path, engine::Renderer& renderer, engine::SampleRate rate,
                      std::uint64_t frames);

} // namespace piolo::practice
