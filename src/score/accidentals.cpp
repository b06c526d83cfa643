// SPDX-License-Identifier: GPL-3.0-or-later
#include "score/accidentals.h"

#include <algorithm>

namespace piolo::score {

namespace {

constexpr std::int32_t mostFifths = 7;
constexpr std::string_view orderOfSharps = "FCGDAEB";
// accidental-value, MusicXML 4.0; from three flats to three sharps.
constexpr std::array<std::string_view, 7> signs{"triple-flat", "flat-flat",    "flat",        "natural",
                                                "sharp",       "double-sharp", "triple-sharp"};

std::ptrdiff_t strangers(const std::vector<Note>& notes, std::int32_t fifths) noexcept {
    return std::ranges::count_if(notes, [&](const Note& note) {
        return !note.tiedBefore && note.written.alter != alterInKey(note.written.step, fifths);
    });
}

} // namespace

std::int8_t alterInKey(char step, std::int32_t fifths) noexcept {
    const auto place = static_cast<std::int32_t>(orderOfSharps.find(step));
    if (fifths > place) return 1;
    return fifths < 0 && place >= mostFifths + fifths ? std::int8_t{-1} : std::int8_t{0};
}

std::int32_t keyOf(const std::vector<Note>& notes) noexcept {
    std::int32_t best = 0;
    std::ptrdiff_t fewest = strangers(notes, best);
    for (std::int32_t count = 1; count <= mostFifths; ++count)
        for (const std::int32_t fifths : {count, -count})
            if (const auto found = strangers(notes, fifths); found < fewest) {
                best = fifths;
                fewest = found;
            }
    return best;
}

void Accidentals::beginBar() noexcept {
    for (auto& octave : alters_)
        for (std::size_t step = 0; step < octave.size(); ++step)
            octave[step] = alterInKey(static_cast<char>('A' + step), fifths_);
}

std::optional<std::string_view> Accidentals::before(WrittenPitch pitch, bool tied) noexcept {
    auto& inForce =
        alters_[static_cast<std::size_t>(pitch.octave)][static_cast<std::size_t>(pitch.step - 'A')];
    if (tied || inForce == pitch.alter) return std::nullopt;
    inForce = pitch.alter;
    return signs[static_cast<std::size_t>(pitch.alter + 3)];
}

} // namespace piolo::score
