// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/music/staff_music.h"

#include "core/music/instrument.h"
#include "core/music/key_signature.h"

namespace piolo {

namespace {

/// The bass clef if the notes are more below middle C than above it.
Clef likelyClef(const std::vector<Note>& notes) {
    constexpr std::int64_t middleC = 60;
    std::int64_t above = 0;
    for (const Note& note : notes) above += midiNumber(note.written) - middleC;
    return above < 0 ? Clef::bass : Clef::treble;
}

} // namespace

StaffMusic staffOf(const Passage& passage) {
    StaffMusic staff;
    staff.clef = likelyClef(passage.notes);
    staff.fifths = static_cast<std::int8_t>(likelyFifths(passage.notes));
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
