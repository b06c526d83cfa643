// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/pitch_text.h"

#include <cstdlib>

namespace piolo {

std::string pitchText(WrittenPitch pitch) {
    const char sign = pitch.alter < 0 ? 'b' : '#';
    return pitch.step + std::string(static_cast<std::size_t>(std::abs(pitch.alter)), sign) +
           std::to_string(pitch.octave);
}

} // namespace piolo
