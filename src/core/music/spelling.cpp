// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/music/spelling.h"

namespace piolo {

int lettersAboveC(WrittenPitch pitch) noexcept {
    const int letter = (pitch.step - 'C' + lettersOfOctave) % lettersOfOctave;
    return pitch.octave * lettersOfOctave + letter;
}

WrittenPitch spelledAt(int letters, int midi) noexcept {
    const auto [octave, letter] = octavesOf(letters, lettersOfOctave);
    constexpr int lettersBeforeA = 5;
    const int step = letter < lettersBeforeA ? 'C' + letter : 'A' + letter - lettersBeforeA;
    WrittenPitch pitch{static_cast<char>(step), 0, static_cast<std::int8_t>(octave)};
    pitch.alter = static_cast<std::int8_t>(midi - midiNumber(pitch));
    return pitch;
}

WrittenPitch byNextLetter(WrittenPitch pitch) noexcept {
    return spelledAt(lettersAboveC(pitch) + (pitch.alter < 0 ? -1 : 1), midiNumber(pitch));
}

} // namespace piolo
