// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/passages/piece_editor.h"

#include "models/text/formatter.h"
#include "models/text/typed_values.h"
#include "practice/log/practice_book.h"

#include <algorithm>

namespace piolo::models {

namespace {

std::optional<int> countOrNothing(const QString& text, int least, int most) {
    return text.trimmed().isEmpty() ? 0 : readCount(text, least, most);
}

std::optional<int> semitonesOf(const PieceDraft& draft) {
    return countOrNothing(draft.transposition, -Piece::mostSemitones, Piece::mostSemitones);
}

std::optional<int> barsOf(const PieceDraft& draft) { return countOrNothing(draft.bars, 0, Piece::mostBars); }

std::optional<Meter> meterOf(const PieceDraft& draft) {
    if (draft.meter.trimmed().isEmpty()) return Meter{};
    const auto meter = Meter::parse(draft.meter.trimmed().toStdString(), draft.beat.toStdString(), "");
    return meter ? std::optional(*meter) : std::nullopt;
}

/// The draft must be valid.
PieceMusic musicOf(const PieceDraft& draft) {
    return {meterOf(draft).value_or(Meter{}), readTempo(draft.tempo)};
}

QString beatOf(const Meter& meter) {
    const auto usual = Meter::parse(meter.text(), "", "");
    const bool isUsual = usual && usual->beat() == meter.beat();
    return isUsual ? QString() : QString::fromStdString(fractionOf(meter.beat()).text());
}

} // namespace

void PieceDraft::setMusic(const PieceMusic& music) {
    meter = music == PieceMusic{} ? QString() : QString::fromStdString(music.meter.text());
    beat = beatOf(music.meter);
    tempo = music.tempo ? Formatter::tempo(*music.tempo) : QString();
}

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

PieceDraft PieceEditor::recorded(Id piece) const {
    const auto found = book_.notebook().piece(piece);
    if (!found) return {};
    PieceDraft draft{piece,
                     QString::fromStdString(found->name),
                     QString::fromStdString(found->instrument),
                     found->due ? dateForTyping(*found->due) : QString(),
                     QString::fromStdString(found->composer),
                     found->transposition == 0 ? QString() : QString::number(found->transposition),
                     found->bars == 0 ? QString() : QString::number(found->bars),
                     {},
                     {},
                     {},
                     QString::fromStdString(found->notes)};
    draft.setMusic(found->music);
    return draft;
}

Id PieceEditor::save() {
    if (!valid() || book_.readOnly()) return {};
    const PieceDraft before = recorded(draft_.id);
    if (draft_ == before) return draft_.id;
    const bool fresh = draft_.id.isNone();
    if (fresh) draft_.id = book_.newId();
    PieceFact fact{draft_.id, {}, {}, {}};
    if (draft_.name != before.name) fact.name = draft_.name.trimmed().toStdString();
    if (draft_.instrument != before.instrument) fact.instrument = draft_.instrument.trimmed().toStdString();
    if (draft_.due != before.due) fact.due = readDate(draft_.due);
    if (draft_.composer != before.composer) fact.composer = draft_.composer.trimmed().toStdString();
    if (draft_.transposition != before.transposition) fact.transposition = semitonesOf(draft_);
    if (draft_.bars != before.bars) fact.bars = barsOf(draft_);
    if (musicOf(draft_) != musicOf(before)) fact.music = musicOf(draft_);
    if (draft_.notes != before.notes) fact.notes = draft_.notes.trimmed().toStdString();
    book_.record(fact);
    setDraft(recorded(draft_.id));
    return draft_.id;
}

} // namespace piolo::models
