// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/rendered_wav.h"
#include "app/track_file.h"

namespace piolo::app {

Done writeTrackWav(const std::string& path, const engine::ClickTrack& track, engine::SampleRate rate) {
    engine::TrackPlayer player(track);
    player.prepare(rate, wavBlockFrames);
    return writeRenderedWav(path, player, rate, player.length());
}

} // namespace piolo::app
