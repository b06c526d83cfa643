// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/interruption.h"
#include "app/track_file.h"
#include "files/wav.h"

#include <algorithm>
#include <vector>

namespace piolo::app {
namespace {

constexpr std::size_t blockFrames = 65'536;

Done renderInto(files::WavWriter& file, engine::TrackPlayer& player) {
    std::vector<float> block(blockFrames);
    std::uint64_t left = player.length();
    while (left > 0 && !Interruption::came()) {
        const auto frames = static_cast<std::size_t>(std::min<std::uint64_t>(left, blockFrames));
        const auto part = std::span(block).first(frames);
        player.render(part);
        Done written = file.write(part);
        if (!written) return written;
        left -= frames;
    }
    return Interruption::came() ? done() : file.commit();
}

} // namespace

Done writeTrackWav(const std::string& path, const engine::ClickTrack& track, engine::SampleRate rate) {
    const Interruption interruption; // outlives the file: its temporary is gone before a signal takes effect
    engine::TrackPlayer player(track);
    player.prepare(rate, static_cast<int>(blockFrames));
    auto file = files::WavWriter::create(path, rate.hertz, player.length());
    if (!file) return file.fault();
    return renderInto(file.value(), player);
}

} // namespace piolo::app
