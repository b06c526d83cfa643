// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/scales/scale_board.h"

#include "models/text/formatter.h"
#include "practice/log/practice_book.h"
#include "text/scale_words.h"

#include <algorithm>

namespace piolo::models {

namespace {

constexpr int weeksShown = 10;
constexpr int rowCount = Scale::mostNotesPerBeat;

} // namespace

ScaleBoard::ScaleBoard(practice::PracticeBook& book, QObject* parent)
    : QObject(parent), book_(book), figures_(book), choices_(book) {
    connect(&book, &practice::PracticeBook::changed, this, &ScaleBoard::forget);
    connect(this, &ScaleBoard::chosen, this, &ScaleBoard::showStaff);
    showStaff();
}

void ScaleBoard::forget() {
    figures_.forget();
    emit changed();
    emit chosen();
}

practice::CellAddress ScaleBoard::cell() const {
    if (chosen_) return *chosen_;
    const CellProposal next = figures_.proposal();
    return {next.notesPerBeat, next.key};
}

int ScaleBoard::row() const { return cell().notesPerBeat - 1; }
int ScaleBoard::column() const { return figures_.columnOf(cell().key); }
int ScaleBoard::proposedRow() const { return figures_.proposal().notesPerBeat - 1; }
int ScaleBoard::proposedColumn() const { return figures_.columnOf(figures_.proposal().key); }

QVariantList ScaleBoard::keys() const {
    const ScaleSettings& settings = figures_.settings();
    const Transposition transposition = playerOf(settings).instrument->transposition;
    QVariantList list;
    for (const int key : figures_.order()) {
        const Tonic written = figures_.tonic(key);
        const QString concert = text::keyName(concertOf(written, settings.view.kind, transposition));
        const QString spoken = qtTrId("scales.key.sounds").arg(text::keyName(written), concert);
        list << QVariantMap{{"name", text::keyName(written)}, {"concert", concert}, {"spoken", spoken}};
    }
    return list;
}

QVariantList ScaleBoard::rows() const {
    QVariantList list;
    const auto keys = figures_.order();
    for (std::int32_t notes = 1; notes <= rowCount; ++notes) {
        QVariantList cells;
        for (const int key : keys) cells << cellMap({notes, key});
        list << QVariantMap{{"words", text::subdivisionOf(notes)},
                            {"detail", qtTrId("scales.notes").arg(notes)},
                            {"notes", notes},
                            {"cells", cells}};
    }
    return list;
}

QVariantMap ScaleBoard::cellMap(practice::CellAddress at) const {
    const ScaleCell& cell = figures_.at(at);
    const QString name =
        qtTrId("scales.cell")
            .arg(text::keyName(figures_.tonic(at.key)), text::subdivisionOf(at.notesPerBeat));
    if (cell.passage.isNone())
        return {{"best", QString()},
                {"share", 0.0},
                {"below", QString()},
                {"secure", false},
                {"spoken", qtTrId("scales.cell.not-played").arg(name)}};
    const QString best = cell.best ? Formatter::tempo(*cell.best) : QStringLiteral("–");
    const QString streak = qtTrId("scales.cell.streak").arg(cell.streak).arg(cell.cleanRuns);
    const QString days = cell.lastDay
                             ? qtTrId("scales.cell.days-short")
                                   .arg(book_.today().daysSince1970() - cell.lastDay->daysSince1970())
                             : QString();
    const QString played =
        cell.lastDay ? Formatter::daysFrom(*cell.lastDay, book_.today()) : qtTrId("scales.cell.never");
    const QString spoken = cell.best ? qtTrId("scales.cell.spoken") : qtTrId("scales.cell.spoken-no-best");
    return {{"best", best},
            {"share", figures_.shareOfTarget(at)},
            {"below", days.isEmpty() ? streak : qtTrId("scales.cell.below").arg(streak, days)},
            {"secure", cell.secure},
            {"spoken", spoken.arg(name, best, Formatter::streak(cell.streak, cell.cleanRuns), played)}};
}

QVariantList ScaleBoard::weeks() const {
    QVariantList list;
    const auto keys = figures_.order();
    for (const ScaleWeek& week : figures_.weeks(weeksShown)) {
        QVariantList runs;
        for (const int key : keys) runs << week.runs.at(static_cast<std::size_t>(key));
        list << QVariantMap{{"label", Formatter::date(week.monday, book_.today())}, {"runs", runs}};
    }
    return list;
}

void ScaleBoard::choose(int row, int column) {
    if (row < 0 || row >= rowCount || column < 0 || column >= keyCount) return;
    chosen_ = practice::CellAddress{row + 1, figures_.order().at(static_cast<std::size_t>(column))};
    emit chosen();
}

void ScaleBoard::move(int columns, int rows) {
    choose(std::clamp(row() + rows, 0, rowCount - 1), (column() + columns + keyCount) % keyCount);
}

void ScaleBoard::chooseProposed() {
    chosen_.reset();
    emit chosen();
}

void ScaleBoard::turnSpelling() {
    if (!otherName().isEmpty()) choices_.turnSpelling(cell().key);
}

} // namespace piolo::models
