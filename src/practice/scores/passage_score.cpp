// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/scores/passage_score.h"

#include "core/music/instrument.h"
#include "core/music/staff_music.h"

namespace piolo::practice {

score::WrittenPart writtenPartOf(const Passage& passage, const Piece& piece) {
    score::WrittenPart part;
    part.title = passage.title.name;
    part.composer = piece.composer;
    part.instrument = piece.instrument;
    const StaffMusic staff = staffOf(passage);
    part.clef = staff.clef;
    part.fifths = staff.fifths;
    part.music = passage.music;
    part.tempo = passage.tempi.rule.target;
    part.notes = passage.notes;
    if (passage.scale && instrumentNamed(passage.scale->instrument) != nullptr)
        part.instrument = passage.scale->instrument;
    if (!part.notes.empty())
        part.transposition = part.notes.front().sounding - midiNumber(part.notes.front().written);
    return part;
}

} // namespace piolo::practice
