// SPDX-License-Identifier: GPL-3.0-or-later
// No sound is made here: the verbs run up to the point where they would write.
#include "practice/sound_files/track_file.h"

namespace piolo::practice {

Done writeTrackWav(const std::string& path, const engine::ClickTrack& /*track*/,
                   engine::SampleRate /*rate*/) {
    return Fault{FaultNumber::cannotWrite, {path}, {}};
}

Done writeTrackMidi(const std::string& path, const engine::ClickTrack& /*track*/,
                    engine::SampleRate /*rate*/) {
    return Fault{FaultNumber::cannotWrite, {path}, {}};
}

} // namespace piolo::practice
