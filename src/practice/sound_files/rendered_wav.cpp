// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/sound_files/rendered_wav.h"

#include "files/interruption.h"
#include "files/wav.h"

#include <algorithm>
#include <vector>

namespace piolo::practice {

Done writeRenderedWav(const std::string& path, engine::Renderer& renderer, engine::SampleRate rate,
                      std::uint64_t frames) {
    const files::Interruption
        interruption; // outlives the file, so that its temporary file is removed before a signal takes effect
    auto file = files::WavWriter::create(path, rate.hertz, frames);
    if (!file) return file.fault();
    std::vector<float> block(wavBlockFrames);
    while (frames > 0 && !files::Interruption::came()) {
        const auto count = std::min<std::uint64_t>(frames, block.size());
        const auto part = std::span(block).first(static_cast<std::size_t>(count));
        renderer.render(part);
        Done written = file.value().write(part);
        if (!written) return written;
        frames -= count;
    }
    return files::Interruption::came() ? done() : file.value().commit();
}

} // namespace piolo::practice
