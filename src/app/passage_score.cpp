// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/passage_score.h"

#include "core/instrument.h"
#include "core/key_signature.h"
#include "score/accidentals.h"

#include <numeric>

namespace piolo::app {

namespace {

/// Middle C stands as far below the treble staff as above the bass staff.
Clef clefFor(const std::vector<Note>& notes) {
    constexpr std::int64_t middleC = 60;
    const auto fromMiddle =
        std::accumulate(notes.begin(), notes.end(), std::int64_t{0}, [](std::int64_t all, const Note& note) {
            return all + midiNumber(note.written) - middleC;
        });
    return fromMiddle < 0 ? Clef::bass : Clef::treble;
}

/// A scale says of itself what else is guessed from the notes.
void takeScale(const Scale& scale, score::WrittenPart& part) {
    part.fifths = fifthsOf(scale.tonic, scale.kind).value_or(0);
    if (const Instrument* instrument = instrumentNamed(scale.instrument)) {
        part.clef = instrument->clef;
        part.instrument = instrument->name;
    }
}

} // namespace

score::WrittenPart writtenPartOf(const Passage& passage, const Piece& piece) {
    score::WrittenPart part;
    part.title = passage.title.name;
    part.composer = piece.composer;
    part.instrument = piece.instrument;
    part.clef = clefFor(passage.notes);
    part.fifths = score::keyOf(passage.notes);
    part.music = passage.music;
    part.tempo = passage.tempi.rule.target;
    part.notes = passage.notes;
    if (passage.scale) takeScale(*passage.scale, part);
    if (!part.notes.empty())
        part.transposition = part.notes.front().sounding - midiNumber(part.notes.front().written);
    return part;
}

} // namespace piolo::app
