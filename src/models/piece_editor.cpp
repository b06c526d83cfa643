// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/piece_editor.h"

#include "models/practice_book.h"
#include "models/typed_values.h"

#include <algorithm>

namespace piolo::models {

PieceEditor::PieceEditor(PracticeBook& book, QObject* parent) : QObject(parent), book_(book) {}

void PieceEditor::setName(const QString& name) { put(&PieceDraft::name, name); }
void PieceEditor::setInstrument(const QString& instrument) { put(&PieceDraft::instrument, instrument); }
void PieceEditor::setDue(const QString& due) { put(&PieceDraft::due, due); }

void PieceEditor::put(QString PieceDraft::*field, const QString& text) {
    if (draft_.*field == text) return;
    draft_.*field = text;
    emit edited();
}

QString PieceEditor::nameFault() const {
    if (draft_.name.trimmed().isEmpty()) return tr("the piece needs a name");
    return draft_.name.trimmed().size() > longestTypedName ? tr("at most %1 letters").arg(longestTypedName)
                                                           : QString();
}

QString PieceEditor::dueFault() const {
    const bool good = draft_.due.trimmed().isEmpty() || readDate(draft_.due).has_value();
    return good ? QString() : tr("a date such as %1, or nothing").arg(dateForTyping(book_.today()));
}

void PieceEditor::setDraft(const PieceDraft& draft) {
    draft_ = draft;
    emit edited();
}

PieceDraft PieceEditor::recorded(Id piece) const {
    const auto pieces = book_.notebook().pieces(true);
    const auto found =
        std::find_if(pieces.begin(), pieces.end(), [&](const Piece& p) { return p.id == piece; });
    if (found == pieces.end()) return {};
    return {piece, QString::fromStdString(found->name), QString::fromStdString(found->instrument),
            found->due ? dateForTyping(*found->due) : QString()};
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
    book_.record(fact);
    setDraft(recorded(draft_.id));
    return draft_.id;
}

} // namespace piolo::models
