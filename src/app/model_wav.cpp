// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/model_file.h"
#include "app/rendered_wav.h"
#include "engine/model_track.h"

namespace piolo::app {

Done writeModelWav(const std::string& path, const engine::ModelScore& score, const engine::Mix& mix,
                   engine::SampleRate rate) {
    engine::ModelTrack track(score, mix);
    track.prepare(rate, wavBlockFrames);
    return writeRenderedWav(path, track, rate, track.length());
}

} // namespace piolo::app
