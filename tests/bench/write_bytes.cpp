// SPDX-License-Identifier: GPL-3.0-or-later
// The cost of the file system alone: `write_bytes FRAMES PATH` writes a WAV file with that many frames, in
// the same blocks and as durably as `piolo click`, without computing anything.
#include "files/wav.h"
#include "practice/sound_files/rendered_wav.h"

#include <algorithm>
#include <cstdlib>
#include <vector>

int main(int count, char** words) {
    if (count != 3) return 2;
    std::uint64_t frames = std::strtoull(words[1], nullptr, 10);
    auto file = piolo::files::WavWriter::create(words[2], 48'000, frames);
    if (!file) return 1;
    const std::vector<float> block(piolo::practice::wavBlockFrames, 0.25F);
    while (frames > 0) {
        const auto part = std::min<std::uint64_t>(frames, block.size());
        if (!file.value().write(std::span(block).first(static_cast<std::size_t>(part)))) return 1;
        frames -= part;
    }
    return file.value().commit() ? 0 : 1;
}
