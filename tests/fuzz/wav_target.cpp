// SPDX-License-Identifier: GPL-3.0-or-later
#include "scratch_file.h"
#include "target.h"

#include "files/wav.h"

namespace piolo::fuzz {

void runWav(std::string_view bytes) {
    const auto path = scratchFile("sound.wav", bytes);
    const auto wav = files::readWav(path);
    if (wav) {
        hold(wav->rate > 0, "a rate is above 0");
        hold(wav->samples.size() * 4 <= bytes.size(), "no more samples than the file holds");
    } else {
        hold(wav.fault().number == FaultNumber::badWav, "what is not a sound is reported as such");
        hold(wav.fault().location.file == path, "a fault names its file");
    }
}

} // namespace piolo::fuzz
