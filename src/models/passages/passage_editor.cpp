// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/passages/passage_editor.h"

#include "models/passages/click_draft.h"
#include "models/passages/passage_draft.h"
#include "models/text/id_text.h"
#include "practice/log/passage_saving.h"
#include "practice/log/practice_book.h"

namespace piolo::models {

PassageEditor::PassageEditor(practice::PracticeBook& book, QObject* parent)
    : QObject(parent), book_(book), piece_(book), choices_(book), text_(book) {
    connect(&piece_, &PieceEditor::edited, this, &PassageEditor::edited);
    connect(&book_, &practice::PracticeBook::changed, this, &PassageEditor::follow);
    connect(&music_, &MusicImport::taken, this, &PassageEditor::takeMusic);
    open(Id{});
}

QString PassageEditor::passage() const { return idText(id_); }
bool PassageEditor::readOnly() const { return book_.readOnly(); }

bool PassageEditor::valid() const {
    return check_.faults.isEmpty() && (typed_.piece.isEmpty() || piece_.valid());
}

bool PassageEditor::changed() const { return typed() != before_; }

TypedPassage PassageEditor::typed() const {
    TypedPassage now = typed_;
    now.pieceDraft = piece_.draft();
    return now;
}

TypedPassage PassageEditor::recorded() const { return recordedForm(book_.notebook(), id_); }

void PassageEditor::check() {
    check_ = checkDraft(typed_.values);
    describe();
}

void PassageEditor::describe() {
    const Standing standing = practice::standingWith(check_.passage.tempi, book_.notebook().passage(id_));
    choices_.follow(check_.passage);
    text_.follow(id_, check_.passage);
    outlook_.show(practice::outlookOf(check_.passage, standing), standing.tempo);
}

void PassageEditor::setPieceChoice(const QString& choice) {
    if (choice == typed_.piece) return;
    typed_.piece = choice;
    piece_.setDraft(recordedPiece(book_.notebook(), idOf(choice)));
}

void PassageEditor::set(const QString& field, const QVariant& value) {
    if (!typed_.values.contains(field) || typed_.values.value(field) == value) return;
    const bool usual = field == QLatin1String("beat") &&
                       value.toString() == usualBeat(typed_.values.value("meter").toString());
    typed_.values.insert(field, usual ? QVariant(QString()) : value);
    check();
    emit edited();
}

void PassageEditor::turnAccent(int beat) {
    const Meter& meter = check_.passage.music.meter;
    if (beat < 0 || beat >= meter.beatsPerBar() || readOnly()) return;
    set(QStringLiteral("accents"), withNextAccent(check_.passage.click, meter, beat));
}

void PassageEditor::takeProposal() {
    const int fewer = outlook_.proposedCleanRuns();
    if (fewer > 0) set("cleanRuns", QString::number(fewer));
}

void PassageEditor::load(const QString& id) { open(idOf(id)); }
void PassageEditor::startNew() { open(Id{}); }

void PassageEditor::loadFirstHalf(const QString& id) {
    load(id);
    const TypedPassage half = firstHalfOf(typed(), book_.notebook(), id_);
    startNew();
    use(half);
    emit edited();
}

void PassageEditor::takeMusic() {
    startNew();
    const score::Score& score = music_.score();
    use(formOf(
        {*music_.excerpt(), score, score.parts[static_cast<std::size_t>(music_.part())], music_.pieceMusic()},
        book_.notebook()));
    emit edited();
}

void PassageEditor::open(Id passage) {
    if (changed()) unsaved_.keep(id_, typed());
    id_ = book_.notebook().passage(passage) != nullptr ? passage : Id{};
    before_ = recorded();
    show(unsaved_.take(id_).value_or(before_));
}

void PassageEditor::revert() {
    before_ = recorded();
    show(before_);
}

void PassageEditor::use(const TypedPassage& form) {
    typed_ = form;
    check();
    piece_.setDraft(form.pieceDraft);
}

void PassageEditor::show(const TypedPassage& form) {
    use(form);
    emit loaded();
    emit edited();
}

// The book changed elsewhere (a run, facts of another window): input stays, untouched fields are updated.
void PassageEditor::follow() {
    const bool touched = changed();
    before_ = recorded();
    if (!touched) return show(before_);
    describe();
    emit edited();
}

QString PassageEditor::save() {
    if (!valid() || readOnly()) return {};
    Passage wanted = check_.passage;
    wanted.id = id_.isNone() ? book_.newId() : id_;
    const TypedPassage form = typed();
    wanted.notes = form.notesFor(wanted.music);
    // The piece is recorded first, so that no passage ever names an unrecorded piece.
    if (!form.piece.isEmpty()) wanted.title.piece = piece_.save();
    practice::savePassage(book_, wanted);
    id_ = wanted.id;
    revert();
    emit saved(passage());
    return passage();
}

} // namespace piolo::models
