// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/sound_files/rendered_wav.h"
#include "practice/sound_files/track_file.h"

namespace piolo::practice {

Done writeTrackWav(const std::string& path, const engine::ClickTrack& track, engine::SampleRate rate) {
    engine::TrackPlayer player(track);
    player.prepare(rate, wavBlockFrames);
    return writeRenderedWav(path, player, rate, player.length());
}

} // namespace piolo::practice
