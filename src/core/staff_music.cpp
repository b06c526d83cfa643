// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/staff_music.h"

#include "core/instrument.h"
#include "core/key_signature.h"

#include <cstdlib>
#include <string_view>

namespace piolo {

namespace {

constexpr std::string_view sharpOrder = "FCGDAEB";

/// The notes that the signature does not have already.
std::size_t accidentalsWith(int fifths, const std::vector<Note>& notes) {
    std::size_t count = 0;
    for (const Note& note : notes)
        if (note.written.alter != signatureAlter(note.written.step, fifths)) ++count;
    return count;
}

std::int8_t likelyFifths(const std::vector<Note>& notes) {
    int best = 0;
    std::size_t fewest = accidentalsWith(0, notes);
    for (int size = 1; size <= mostFifths; ++size)
        for (const int fifths : {size, -size})
            if (const std::size_t count = accidentalsWith(fifths, notes); count < fewest) {
                best = fifths;
                fewest = count;
            }
    return static_cast<std::int8_t>(best);
}

/// Bass where the notes lie below middle C more than above it.
Clef likelyClef(const std::vector<Note>& notes) {
    constexpr std::int64_t middleC = 60;
    std::int64_t above = 0;
    for (const Note& note : notes) above += midiNumber(note.written) - middleC;
    return above < 0 ? Clef::bass : Clef::treble;
}

} // namespace

int signatureAlter(char step, int fifths) noexcept {
    const int place = static_cast<int>(sharpOrder.find(step));
    if (fifths > 0) return place < fifths ? 1 : 0;
    return 6 - place < -fifths ? -1 : 0;
}

StaffMusic staffOf(const Passage& passage) {
    StaffMusic staff;
    staff.clef = likelyClef(passage.notes);
    staff.fifths = likelyFifths(passage.notes);
    staff.music = passage.music;
    staff.notes = passage.notes;
    staff.endsHere = passage.scale.has_value();
    if (!passage.scale) return staff;
    const Instrument* const instrument = instrumentNamed(passage.scale->instrument);
    if (instrument != nullptr) staff.clef = instrument->clef;
    staff.fifths = static_cast<std::int8_t>(fifthsOf(passage.scale->tonic, passage.scale->kind).value_or(0));
    return staff;
}

} // namespace piolo
