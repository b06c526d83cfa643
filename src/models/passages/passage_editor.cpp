// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/passages/passage_editor.h"

#include "core/music/note_stretch.h"
#include "core/passage/difference.h"
#include "models/text/id_text.h"
#include "models/text/typed_values.h"
#include "practice/log/practice_book.h"
#include "text/one_line.h"

#include <algorithm>
#include <utility>

namespace piolo::models {

namespace {

const QString newPiece = QStringLiteral("new");

} // namespace

PassageEditor::PassageEditor(practice::PracticeBook& book, QObject* parent)
    : QObject(parent), book_(book), piece_(book) {
    connect(&piece_, &PieceEditor::edited, this, &PassageEditor::edited);
    connect(&book_, &practice::PracticeBook::changed, this, &PassageEditor::follow);
    connect(&music_, &MusicImport::taken, this, &PassageEditor::takeMusic);
    connect(this, &PassageEditor::edited, this,
            [this] { outlook_.show(practice::outlookOf(check_.passage, standing()), standing().tempo); });
    open(Id{});
}

QString PassageEditor::passage() const { return idText(id_); }
bool PassageEditor::readOnly() const { return book_.readOnly(); }

bool PassageEditor::valid() const {
    return check_.faults.isEmpty() && (typed_.piece.isEmpty() || piece_.valid());
}

bool PassageEditor::changed() const { return typed() != before_; }

PassageEditor::Typed PassageEditor::typed() const {
    Typed now = typed_;
    now.pieceDraft = piece_.draft();
    return now;
}

PassageEditor::Typed PassageEditor::recorded() const {
    const PassageRecord* record = book_.notebook().passage(id_);
    const Passage passage = record != nullptr ? record->passage : freshPassage();
    const Id piece = passage.title.piece;
    Typed typed{draftOf(passage), idText(piece), piece_.recorded(piece), passage.music, passage.notes};
    // The floor and beat of a new passage follow the other fields.
    if (record == nullptr) typed.values.insert("floor", QString());
    return typed;
}

void PassageEditor::setPieceChoice(const QString& choice) {
    if (choice == typed_.piece) return;
    typed_.piece = choice;
    piece_.setDraft(piece_.recorded(Id::parse(choice.toStdString()).value_or(Id{})));
}

void PassageEditor::set(const QString& field, const QVariant& value) {
    if (!typed_.values.contains(field) || typed_.values.value(field) == value) return;
    const bool usual = field == QLatin1String("beat") &&
                       value.toString() == usualBeat(typed_.values.value("meter").toString());
    typed_.values.insert(field, usual ? QVariant(QString()) : value);
    check();
    emit edited();
}

void PassageEditor::takeProposal() {
    const int fewer = outlook_.proposedCleanRuns();
    if (fewer > 0) set("cleanRuns", QString::number(fewer));
}

void PassageEditor::load(const QString& id) { open(Id::parse(id.toStdString()).value_or(Id{})); }
void PassageEditor::startNew() { open(Id{}); }

void PassageEditor::loadFirstHalf(const QString& id) {
    load(id);
    const QVariantMap whole = draft();
    const QString piece = pieceChoice();
    startNew();
    setPieceChoice(piece);
    for (auto field = whole.begin(); field != whole.end(); ++field) set(field.key(), field.value());
    const int half = std::max(1, whole.value(QStringLiteral("bars")).toString().toInt() / 2);
    set(QStringLiteral("title"), QString());
    set(QStringLiteral("bars"), QString::number(half));
    const PassageRecord* const known = book_.notebook().passage(Id::parse(id.toStdString()).value_or(Id{}));
    if (known == nullptr) return;
    const Music& music = known->passage.music;
    const BuildUpPart part{music.firstBar, half};
    giveNotes(musicOf(part, music), notesOf(part, music, known->passage.notes));
}

void PassageEditor::giveNotes(const Music& music, std::vector<Note> notes) {
    typed_.notedMusic = music;
    typed_.notes = std::move(notes);
    emit edited();
}

void PassageEditor::open(Id passage) {
    if (changed()) unsaved_[id_] = typed();
    id_ = book_.notebook().passage(passage) != nullptr ? passage : Id{};
    before_ = recorded();
    const auto kept = unsaved_.find(id_);
    show(kept == unsaved_.end() ? before_ : kept->second);
    unsaved_.erase(id_);
}

// Leaves the name to the form (the bars). Uses a piece with that title, or begins a new one.
void PassageEditor::takeMusic() {
    const score::Excerpt& picked = *music_.excerpt();
    startNew();
    Passage passage;
    passage.music = picked.music;
    passage.tempi = score::tempiOf(picked);
    typed_.values = draftOf(passage);
    typed_.values.insert("floor", QString());
    giveNotes(picked.music, score::notesKept(picked));
    check();
    choosePiece(music_.score(), music_.score().parts[static_cast<std::size_t>(music_.part())]);
    emit edited();
}

void PassageEditor::choosePiece(const score::Score& score, const score::Part& part) {
    for (const Piece& piece : book_.notebook().pieces())
        if (piece.name == score.title) return setPieceChoice(idText(piece.id));
    setPieceChoice(QStringLiteral("new"));
    PieceDraft draft;
    draft.name = text::onOneLine(score.title).left(longestTypedName);
    draft.instrument = text::onOneLine(part.name).left(longestTypedName);
    draft.composer = text::onOneLine(score.composer).left(longestTypedName);
    const int semitones = part.bars.front().transposition.semitones();
    if (semitones != 0) draft.transposition = QString::number(semitones);
    draft.setMusic(music_.pieceMusic());
    if (const auto last = readCount(text::onOneLine(part.bars.back().number), 1, Piece::mostBars))
        draft.bars = QString::number(*last);
    piece_.setDraft(draft);
}

void PassageEditor::revert() {
    unsaved_.erase(id_);
    before_ = recorded();
    show(before_);
}

void PassageEditor::show(const Typed& typed) {
    typed_ = typed;
    check();
    piece_.setDraft(typed.pieceDraft);
    emit loaded();
    emit edited();
}

void PassageEditor::check() { check_ = checkDraft(typed_.values); }

// The book changed elsewhere (a run, facts of another window): input stays, untouched fields are updated.
void PassageEditor::follow() {
    emit piecesChanged();
    const bool touched = changed();
    before_ = recorded();
    if (!touched)
        show(before_);
    else
        emit edited();
}

QString PassageEditor::save() {
    if (!valid() || readOnly()) return {};
    Passage wanted = check_.passage;
    wanted.id = id_.isNone() ? book_.newId() : id_;
    if (const PassageRecord* known = book_.notebook().passage(id_))
        wanted.title.origin = known->passage.title.origin;
    // The piece is recorded first, so that no passage ever names an unrecorded piece.
    const Typed kept = typed();
    if (!kept.piece.isEmpty()) wanted.title.piece = piece_.save();
    if (sameBars(kept.notedMusic, wanted.music)) wanted.notes = kept.notes;
    record(wanted);
    id_ = wanted.id;
    revert();
    emit saved(passage());
    return passage();
}

void PassageEditor::record(const Passage& wanted) {
    const PassageRecord* const known = book_.notebook().passage(wanted.id);
    const GroupMarks groups =
        known == nullptr ? makingGroups(wanted) : differingGroups(known->passage, wanted);
    if (groups.any()) book_.record(factOf(wanted, groups));
}

} // namespace piolo::models
