// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/passages/typed_passage.h"

#include "core/music/note_stretch.h"
#include "models/passages/passage_draft.h"
#include "models/text/id_text.h"
#include "models/text/typed_values.h"
#include "text/one_line.h"

#include <algorithm>

namespace piolo::models {

namespace {

PieceDraft newPieceOf(const PickedBars& picked) {
    PieceDraft draft;
    draft.name = text::onOneLine(picked.score.title).left(longestTypedName);
    draft.instrument = text::onOneLine(picked.part.name).left(longestTypedName);
    draft.composer = text::onOneLine(picked.score.composer).left(longestTypedName);
    const int semitones = picked.part.bars.front().transposition.semitones();
    if (semitones != 0) draft.transposition = QString::number(semitones);
    draft.setMusic(picked.pieceMusic);
    if (const auto last = readCount(text::onOneLine(picked.part.bars.back().number), 1, Piece::mostBars))
        draft.bars = QString::number(*last);
    return draft;
}

} // namespace

PieceDraft recordedPiece(const Notebook& notebook, Id piece) {
    const auto found = notebook.piece(piece);
    return found ? draftOf(*found) : PieceDraft{};
}

std::vector<Note> TypedPassage::notesFor(const Music& music) const {
    return sameBars(notedMusic, music) ? notes : std::vector<Note>{};
}

TypedPassage recordedForm(const Notebook& notebook, Id id) {
    const PassageRecord* const record = notebook.passage(id);
    const Passage passage = record != nullptr ? record->passage : freshPassage();
    const Id piece = passage.title.piece;
    TypedPassage typed{draftOf(passage), idText(piece), recordedPiece(notebook, piece), passage.music,
                       passage.notes};
    // The floor and beat of a new passage follow the other fields.
    if (record == nullptr) typed.values.insert("floor", QString());
    return typed;
}

TypedPassage firstHalfOf(const TypedPassage& whole, const Notebook& notebook, Id passage) {
    const Id piece = idOf(whole.piece);
    TypedPassage half{whole.values, whole.piece, recordedPiece(notebook, piece)};
    const int bars = std::max(1, whole.values.value("bars").toString().toInt() / 2);
    half.values.insert("title", QString());
    half.values.insert("bars", QString::number(bars));
    const PassageRecord* const record = notebook.passage(passage);
    if (record == nullptr) return half;
    const Music& music = record->passage.music;
    const BuildUpPart part{music.firstBar, bars};
    half.notedMusic = musicOf(part, music);
    half.notes = notesOf(part, music, record->passage.notes);
    return half;
}

TypedPassage formOf(const PickedBars& picked, const Notebook& notebook) {
    Passage passage;
    passage.music = picked.excerpt.music;
    passage.tempi = score::tempiOf(picked.excerpt);
    TypedPassage form{draftOf(passage), newPieceChoice, {}, passage.music, score::notesKept(picked.excerpt)};
    form.values.insert("floor", QString()); // it follows the start
    const auto pieces = notebook.pieces();
    const auto known = std::ranges::find(pieces, picked.score.title, &Piece::name);
    if (known == pieces.end())
        form.pieceDraft = newPieceOf(picked);
    else {
        form.piece = idText(known->id);
        form.pieceDraft = draftOf(*known);
    }
    return form;
}

} // namespace piolo::models
