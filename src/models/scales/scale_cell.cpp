// SPDX-License-Identifier: GPL-3.0-or-later
// The selected cell of the grid: what it is, why it is suggested, and how it becomes a passage.
#include "models/scales/scale_board.h"
#include "models/text/formatter.h"
#include "models/text/id_text.h"
#include "practice/log/practice_book.h"
#include "text/scale_words.h"

namespace piolo::models {

namespace {

bool wasPlayed(const ScaleCell& cell) { return !cell.passage.isNone() && cell.lastDay.has_value(); }

QString withFirstLarge(QString text) {
    if (!text.isEmpty()) text[0] = text[0].toUpper();
    return text;
}

} // namespace

Scale ScaleBoard::scale() const { return figures_.scale(cell()); }
std::optional<ScalePart> ScaleBoard::part() const { return figures_.part(cell()); }

void ScaleBoard::showStaff() {
    const auto played = part();
    staff_.show(played ? std::optional(staffOf(scalePassage({}, scale(), *played, {}))) : std::nullopt);
}

QString ScaleBoard::title() const {
    return qtTrId("scales.cell.title")
        .arg(text::scaleName(figures_.tonic(cell().key), figures_.settings().view.kind),
             text::subdivisionOf(cell().notesPerBeat));
}

QString ScaleBoard::whyText() const {
    const CellProposal next = figures_.proposal();
    const practice::CellAddress here = cell();
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
    return wasPlayed(figures_.at(here)) ? QString() : qtTrId("scales.not-played");
}

QString ScaleBoard::cellText() const {
    const ScaleCell& known = figures_.at(cell());
    if (!wasPlayed(known)) return {};
    const QString streak = Formatter::streak(known.streak, known.cleanRuns);
    const QString played = Formatter::daysFrom(*known.lastDay, book_.today());
    const QString words =
        known.best ? qtTrId("scales.cell.in-words").arg(Formatter::tempo(*known.best), streak, played)
                   : qtTrId("scales.cell.in-words-no-best").arg(streak, played);
    return known.secure ? qtTrId("scales.two-sentences").arg(words, qtTrId("scales.cell.secure")) : words;
}

QString ScaleBoard::startText() const {
    const practice::CellAddress here = cell();
    const ScaleCell& known = figures_.at(here);
    if (!known.passage.isNone())
        return qtTrId("scales.goes-on").arg(Formatter::tempo(figures_.goesOnAt(here)));
    const StartProposal from = figures_.start(here);
    const QString start = Formatter::tempo(from.start);
    switch (from.from) {
    case StartProposal::From::fewerNotes:
        return qtTrId("scales.starts-from").arg(start, text::subdivisionOf(from.notesPerBeat));
    case StartProposal::From::nextKey:
        return qtTrId("scales.starts-from").arg(start, text::keyName(figures_.tonic(from.key)));
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
        .arg(text::noteName(played->highest), text::noteName(playerOf(figures_.settings()).range.highest));
}

QString ScaleBoard::otherName() const {
    const auto names = spellingsOf(cell().key, figures_.settings().view.kind);
    if (names.size() < 2) return {};
    return text::keyName(figures_.tonic(cell().key) == names[0] ? names[1] : names[0]);
}

bool ScaleBoard::canDrill() const { return figures_.canDrill(cell()); }

// The cell stays selected, even if the suggestion moves on.
Id ScaleBoard::passageOfCell() {
    const practice::CellAddress here = cell();
    chosen_ = here;
    return figures_.passage(here);
}

QString ScaleBoard::passageToDrill() { return idText(passageOfCell()); }

Id ScaleBoard::proposedPassage() {
    chosen_.reset();
    return passageOfCell();
}

} // namespace piolo::models
