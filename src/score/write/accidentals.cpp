// SPDX-License-Identifier: GPL-3.0-or-later
#include "score/write/accidentals.h"

#include "core/music/key_signature.h"

namespace piolo::score {

namespace {

// accidental-value, MusicXML 4.0; from three flats to three sharps.
constexpr std::array<std::string_view, 7> signs{"triple-flat", "flat-flat",    "flat",        "natural",
                                                "sharp",       "double-sharp", "triple-sharp"};

} // namespace

void Accidentals::beginBar() noexcept {
    for (auto& octave : alters_)
        for (std::size_t step = 0; step < octave.size(); ++step)
            octave[step] = signatureAlter(static_cast<char>('A' + step), fifths_);
}

std::optional<std::string_view> Accidentals::before(WrittenPitch pitch, bool tied) noexcept {
    auto& inForce =
        alters_[static_cast<std::size_t>(pitch.octave)][static_cast<std::size_t>(pitch.step - 'A')];
    if (tied || inForce == pitch.alter) return std::nullopt;
    inForce = pitch.alter;
    return signs[static_cast<std::size_t>(pitch.alter + 3)];
}

} // namespace piolo::score
