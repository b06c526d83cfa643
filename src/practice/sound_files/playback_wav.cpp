// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/playback/playback_track.h"
#include "practice/sound_files/playback_file.h"
#include "practice/sound_files/rendered_wav.h"

namespace piolo::practice {

Done writePlaybackWav(const std::string& path, const engine::PlaybackScore& score, const engine::Mix& mix,
                      engine::SampleRate rate) {
    engine::PlaybackTrack track(score, mix);
    track.prepare(rate, wavBlockFrames);
    return writeRenderedWav(path, track, rate, track.length());
}

} // namespace piolo::practice
