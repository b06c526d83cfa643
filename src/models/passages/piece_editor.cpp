// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/passages/piece_editor.h"

#include "models/passages/typed_passage.h"
#include "models/text/formatter.h"
#include "models/text/typed_values.h"
#include "practice/log/practice_book.h"

namespace piolo::models {

PieceEditor::PieceEditor(practice::PracticeBook& book, QObject* parent) : QObject(parent), book_(book) {}

void PieceEditor::setName(const QString& name) { put(&PieceDraft::name, name); }
void PieceEditor::setInstrument(const QString& instrument) { put(&PieceDraft::instrument, instrument); }
void PieceEditor::setDue(const QString& due) { put(&PieceDraft::due, due); }
void PieceEditor::setComposer(const QString& composer) { put(&PieceDraft::composer, composer); }
void PieceEditor::setTransposition(const QString& semitones) { put(&PieceDraft::transposition, semitones); }
void PieceEditor::setBars(const QString& bars) { put(&PieceDraft::bars, bars); }
void PieceEditor::setTempo(const QString& tempo) { put(&PieceDraft::tempo, tempo); }
void PieceEditor::setMeter(const QString& meter) {
    if (meter != draft_.meter) draft_.beat.clear();
    put(&PieceDraft::meter, meter);
}
void PieceEditor::setNotes(const QString& notes) { put(&PieceDraft::notes, notes); }

void PieceEditor::put(QString PieceDraft::*field, const QString& text) {
    if (draft_.*field == text) return;
    draft_.*field = text;
    emit edited();
}

QString PieceEditor::nameFault() const {
    if (draft_.name.trimmed().isEmpty()) return qtTrId("piece.fault.name");
    return draft_.name.trimmed().size() > longestTypedName
               ? qtTrId("piece.fault.letters").arg(longestTypedName)
               : QString();
}

QString PieceEditor::dueFault() const {
    const bool good = draft_.due.trimmed().isEmpty() || readDate(draft_.due).has_value();
    return good ? QString() : qtTrId("piece.fault.due").arg(dateForTyping(book_.today()));
}

QString PieceEditor::composerFault() const {
    const bool good = draft_.composer.trimmed().size() <= longestTypedName;
    return good ? QString() : qtTrId("piece.fault.letters").arg(longestTypedName);
}

QString PieceEditor::transpositionFault() const {
    return semitonesOf(draft_)
               ? QString()
               : qtTrId("piece.fault.whole").arg(-Piece::mostSemitones).arg(Piece::mostSemitones);
}

QString PieceEditor::barsFault() const {
    return barsOf(draft_) ? QString() : qtTrId("piece.fault.whole-or-none").arg(Piece::mostBars);
}

QString PieceEditor::tempoLabel() const {
    const auto meter = meterOf(draft_);
    return qtTrId("piece.tempo").arg(Formatter::beatSign(meter.value_or(Meter{}).beat()));
}

QString PieceEditor::meterFault() const { return meterOf(draft_) ? QString() : qtTrId("piece.fault.meter"); }

QString PieceEditor::tempoFault() const {
    const bool good = draft_.tempo.trimmed().isEmpty() || readTempo(draft_.tempo).has_value();
    return good ? QString() : qtTrId("piece.fault.tempo");
}

QString PieceEditor::notesFault() const {
    const bool good = draft_.notes.trimmed().toStdString().size() <= Piece::longestNotes;
    return good ? QString() : qtTrId("piece.fault.too-long");
}

bool PieceEditor::valid() const {
    return nameFault().isEmpty() && dueFault().isEmpty() && composerFault().isEmpty() &&
           transpositionFault().isEmpty() && barsFault().isEmpty() && meterFault().isEmpty() &&
           tempoFault().isEmpty() && notesFault().isEmpty();
}

void PieceEditor::setDraft(const PieceDraft& draft) {
    draft_ = draft;
    emit edited();
}

Id PieceEditor::save() {
    if (!valid() || book_.readOnly()) return {};
    const PieceDraft before = recordedPiece(book_.notebook(), draft_.id);
    if (draft_ == before) return draft_.id;
    if (draft_.id.isNone()) draft_.id = book_.newId();
    book_.record(changesIn(draft_, before));
    setDraft(recordedPiece(book_.notebook(), draft_.id));
    return draft_.id;
}

} // namespace piolo::models
