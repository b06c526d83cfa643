// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/passages/piece_draft.h"

#include "models/text/formatter.h"
#include "models/text/typed_values.h"

namespace piolo::models {

namespace {

std::optional<int> countOrNothing(const QString& text, int least, int most) {
    return text.trimmed().isEmpty() ? 0 : readCount(text, least, most);
}

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

PieceDraft draftOf(const Piece& piece) {
    PieceDraft draft{piece.id,
                     QString::fromStdString(piece.name),
                     QString::fromStdString(piece.instrument),
                     piece.due ? dateForTyping(*piece.due) : QString(),
                     QString::fromStdString(piece.composer),
                     piece.transposition == 0 ? QString() : QString::number(piece.transposition),
                     piece.bars == 0 ? QString() : QString::number(piece.bars),
                     {},
                     {},
                     {},
                     QString::fromStdString(piece.notes)};
    draft.setMusic(piece.music);
    return draft;
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

PieceFact changesIn(const PieceDraft& draft, const PieceDraft& before) {
    PieceFact fact{draft.id, {}, {}, {}};
    if (draft.name != before.name) fact.name = draft.name.trimmed().toStdString();
    if (draft.instrument != before.instrument) fact.instrument = draft.instrument.trimmed().toStdString();
    if (draft.due != before.due) fact.due = readDate(draft.due);
    if (draft.composer != before.composer) fact.composer = draft.composer.trimmed().toStdString();
    if (draft.transposition != before.transposition) fact.transposition = semitonesOf(draft);
    if (draft.bars != before.bars) fact.bars = barsOf(draft);
    if (musicOf(draft) != musicOf(before)) fact.music = musicOf(draft);
    if (draft.notes != before.notes) fact.notes = draft.notes.trimmed().toStdString();
    return fact;
}

} // namespace piolo::models
