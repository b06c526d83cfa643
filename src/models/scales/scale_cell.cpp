// SPDX-License-Identifier: GPL-3.0-or-later
// The cell chosen in the grid: what it is, why it is proposed, and how it becomes a passage.
#include "core/passage/difference.h"
#include "models/scales/scale_board.h"
#include "models/text/formatter.h"
#include "practice/log/practice_book.h"
#include "text/scale_words.h"

#include <algorithm>

namespace piolo::models {

namespace {

QString withFirstLarge(QString text) {
    if (!text.isEmpty()) text[0] = text[0].toUpper();
    return text;
}

} // namespace

Scale ScaleBoard::scaleIn(Cell cell) const {
    const ScaleSettings& settings = choices_.settings();
    return {tonic(cell.key),       settings.view.kind, settings.view.range,
            settings.view.pattern, cell.notesPerBeat,  settings.instrument};
}

std::optional<ScalePart> ScaleBoard::partIn(Cell cell) const {
    const Player player = playerOf(choices_.settings());
    return scalePart(scaleIn(cell), player.instrument->transposition, player.range);
}

Scale ScaleBoard::scale() const { return scaleIn(cell()); }
std::optional<ScalePart> ScaleBoard::part() const { return partIn(cell()); }

void ScaleBoard::showStaff() {
    const auto played = part();
    staff_.show(played ? std::optional(staffOf(scalePassage({}, scale(), *played, {}))) : std::nullopt);
}

QString ScaleBoard::title() const {
    return qtTrId("scales.cell.title")
        .arg(text::scaleName(tonic(cell().key), choices_.settings().view.kind),
             text::subdivisionOf(cell().notesPerBeat));
}

QString ScaleBoard::whyText() const {
    const CellProposal next = proposal();
    const Cell here = cell();
    if (next.key == here.key && next.notesPerBeat == here.notesPerBeat) switch (next.why) {
        case CellProposal::Why::first:
            return qtTrId("scales.next.first");
        case CellProposal::Why::longest:
            return qtTrId("scales.next.oldest").arg(Formatter::days(static_cast<int>(next.days)));
        case CellProposal::Why::unplayed:
            return qtTrId("scales.next.never");
        case CellProposal::Why::slowest:
            return qtTrId("scales.next.furthest");
        }
    const ScaleCell& known = grid().at(here.notesPerBeat, here.key);
    if (known.passage.isNone() || !known.lastDay) return qtTrId("scales.not-played");
    return qtTrId("scales.played")
        .arg(Formatter::daysFrom(*known.lastDay, book_.today()),
             Formatter::streak(known.streak, known.cleanRuns));
}

QString ScaleBoard::startText() const {
    const Cell here = cell();
    const ScaleCell& known = grid().at(here.notesPerBeat, here.key);
    if (!known.passage.isNone()) {
        const auto opens = book_.notebook().opening(known.passage, book_.today());
        return qtTrId("scales.goes-on").arg(Formatter::tempo(opens.value_or(known.tempo)));
    }
    const StartProposal from = startFor(grid(), here.notesPerBeat, here.key);
    const QString start = Formatter::tempo(from.start);
    switch (from.from) {
    case StartProposal::From::fewerNotes:
        return qtTrId("scales.starts-from").arg(start, text::subdivisionOf(from.notesPerBeat));
    case StartProposal::From::nextKey:
        return qtTrId("scales.starts-from").arg(start, text::keyName(tonic(from.key)));
    case StartProposal::From::nothing:
        break;
    }
    return qtTrId("scales.starts-slow").arg(start);
}

QString ScaleBoard::notesText() const {
    const auto played = part();
    if (!played) return {};
    QStringList names;
    for (const Note& note : played->notes) names << text::noteName(note.written);
    return names.join(QLatin1Char(' '));
}

QString ScaleBoard::endText() const {
    const auto played = part();
    if (!played) return {};
    const QString signature = withFirstLarge(text::signatureText(played->fifths)) + QLatin1Char('.');
    const QString ending = text::endingText(played->ending);
    return ending.isEmpty() ? signature : qtTrId("scales.two-sentences").arg(signature, ending);
}

QString ScaleBoard::rangeText() const {
    const auto played = part();
    if (!played) return qtTrId("scales.no-tonic");
    if (!played->altissimo) return {};
    return qtTrId("scales.altissimo")
        .arg(text::noteName(played->highest), text::noteName(playerOf(choices_.settings()).range.highest));
}

QString ScaleBoard::otherName() const {
    const auto names = spellingsOf(cell().key, choices_.settings().view.kind);
    if (names.size() < 2) return {};
    return text::keyName(tonic(cell().key) == names[0] ? names[1] : names[0]);
}

bool ScaleBoard::canDrill() const {
    if (!choices_.ready()) return false;
    const Cell here = cell();
    const bool known = !grid().at(here.notesPerBeat, here.key).passage.isNone();
    return known || (!book_.readOnly() && part().has_value());
}

QString ScaleBoard::passageToDrill() {
    const Cell here = cell();
    chosen_ = here;
    return canDrill() ? passageIn(here) : QString();
}

QString ScaleBoard::proposedPassage() {
    chosen_.reset();
    return passageToDrill();
}

// A key that is spelled otherwise now than when it was made, or played in another range, is another part on
// the stand: it keeps its passage, and with it its record, and gets the other notes.
QString ScaleBoard::passageIn(Cell here) {
    const ScaleCell& known = grid().at(here.notesPerBeat, here.key);
    const PassageRecord* const record = book_.notebook().passage(known.passage);
    const auto played = partIn(here);
    if (!played) return record == nullptr ? QString() : QString::fromStdString(known.passage.text());
    const Scale scale = scaleIn(here);
    if (record == nullptr) {
        const Id id = book_.newId();
        const Passage made = scalePassage(id, scale, *played, startFor(grid(), here.notesPerBeat, here.key));
        book_.record(factOf(made, makingGroups(made)));
        return QString::fromStdString(id.text());
    }
    const QString id = QString::fromStdString(known.passage.text());
    const bool same = record->passage.scale == scale && record->passage.notes == played->notes;
    if (same || book_.readOnly()) return id;
    Passage renamed = record->passage;
    if (renamed.title.name == textOf(*renamed.scale)) renamed.title.name = textOf(scale);
    renamed.scale = scale;
    renamed.music.bars = played->music.bars;
    renamed.music.landing = played->music.landing;
    renamed.notes = played->notes;
    book_.record(factOf(renamed, differingGroups(record->passage, renamed)));
    return id;
}

} // namespace piolo::models
