// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/scales/scale_board.h"

#include "core/scales/scale_weeks.h"
#include "models/text/formatter.h"
#include "practice/log/practice_book.h"
#include "text/scale_words.h"

#include <algorithm>
#include <span>
#include <vector>

namespace piolo::models {

namespace {

constexpr int weeksShown = 10;
constexpr int rowCount = Scale::mostNotesPerBeat;

} // namespace

ScaleBoard::ScaleBoard(practice::PracticeBook& book, QObject* parent)
    : QObject(parent), book_(book), choices_(book) {
    connect(&book, &practice::PracticeBook::changed, this, &ScaleBoard::forget);
    connect(this, &ScaleBoard::chosen, this, &ScaleBoard::showStaff);
    showStaff();
}

void ScaleBoard::forget() {
    grid_.reset();
    emit changed();
    emit chosen();
}

const ScaleGrid& ScaleBoard::grid() const {
    const ScaleSettings& settings = choices_.settings();
    if (!grid_) grid_ = gridOf(book_.notebook(), settings.view, settings.instrument);
    return *grid_;
}

std::array<int, keyCount> ScaleBoard::order() const {
    const ScaleSettings& settings = choices_.settings();
    return keysInOrder(settings.order, static_cast<std::uint32_t>(settings.seed));
}

int ScaleBoard::columnOf(int key) const {
    const auto keys = order();
    return static_cast<int>(std::ranges::find(keys, key) - keys.begin());
}

Tonic ScaleBoard::tonic(int key) const {
    return choices_.settings().spelling.tonic(key, choices_.settings().view.kind);
}

// Where no key can be played the first one says so.
CellProposal ScaleBoard::proposal() const {
    const NoteRange range = playerOf(choices_.settings()).range;
    const auto all = order();
    std::vector<int> keys;
    for (const int key : all)
        if (hasTonic(range, tonic(key))) keys.push_back(key);
    return nextCell(grid(), keys.empty() ? std::span<const int>(all) : keys, book_.today());
}

ScaleBoard::Cell ScaleBoard::cell() const {
    if (chosen_) return *chosen_;
    const CellProposal next = proposal();
    return {next.notesPerBeat, next.key};
}

int ScaleBoard::row() const { return cell().notesPerBeat - 1; }
int ScaleBoard::column() const { return columnOf(cell().key); }
int ScaleBoard::proposedRow() const { return proposal().notesPerBeat - 1; }
int ScaleBoard::proposedColumn() const { return columnOf(proposal().key); }

QVariantList ScaleBoard::keys() const {
    const ScaleSettings& settings = choices_.settings();
    const Transposition transposition = playerOf(settings).instrument->transposition;
    QVariantList list;
    for (const int key : order()) {
        const Tonic written = tonic(key);
        const QString concert = text::keyName(concertOf(written, settings.view.kind, transposition));
        const QString spoken = qtTrId("scales.key.sounds").arg(text::keyName(written), concert);
        list << QVariantMap{{"name", text::keyName(written)}, {"concert", concert}, {"spoken", spoken}};
    }
    return list;
}

QVariantList ScaleBoard::rows() const {
    QVariantList list;
    const auto keys = order();
    for (std::int32_t notes = 1; notes <= rowCount; ++notes) {
        QVariantList cells;
        for (const int key : keys) cells << cellMap({notes, key});
        list << QVariantMap{{"words", text::subdivisionOf(notes)},
                            {"detail", qtTrId("scales.notes").arg(notes)},
                            {"cells", cells}};
    }
    return list;
}

QVariantMap ScaleBoard::cellMap(Cell at) const {
    const ScaleCell& cell = grid().at(at.notesPerBeat, at.key);
    const QString name =
        qtTrId("scales.cell").arg(text::keyName(tonic(at.key)), text::subdivisionOf(at.notesPerBeat));
    if (cell.passage.isNone())
        return {{"best", QString()},
                {"share", 0.0},
                {"below", QString()},
                {"secure", false},
                {"spoken", qtTrId("scales.cell.not-played").arg(name)}};
    const QString best = cell.best ? Formatter::tempo(*cell.best) : QStringLiteral("–");
    const PassageRecord* const record = book_.notebook().passage(cell.passage);
    const double target = record->passage.tempi.rule.target.thousandths();
    const double share = cell.best ? std::min(1.0, cell.best->thousandths() / target) : 0.0;
    const QString streak = qtTrId("scales.cell.streak").arg(cell.streak).arg(cell.cleanRuns);
    const QString days = cell.lastDay
                             ? qtTrId("scales.cell.days-short")
                                   .arg(book_.today().daysSince1970() - cell.lastDay->daysSince1970())
                             : QString();
    const QString played =
        cell.lastDay ? Formatter::daysFrom(*cell.lastDay, book_.today()) : qtTrId("scales.cell.never");
    const QString spoken = cell.best ? qtTrId("scales.cell.spoken") : qtTrId("scales.cell.spoken-no-best");
    return {{"best", best},
            {"share", share},
            {"below", days.isEmpty() ? streak : qtTrId("scales.cell.below").arg(streak, days)},
            {"secure", cell.secure},
            {"spoken", spoken.arg(name, best, Formatter::streak(cell.streak, cell.cleanRuns), played)}};
}

QVariantList ScaleBoard::weeks() const {
    QVariantList list;
    const auto keys = order();
    for (const ScaleWeek& week :
         scaleWeeks(book_.notebook(), choices_.settings().instrument, book_.today(), weeksShown)) {
        QVariantList runs;
        for (const int key : keys) runs << week.runs.at(static_cast<std::size_t>(key));
        list << QVariantMap{{"label", Formatter::date(week.monday, book_.today())}, {"runs", runs}};
    }
    return list;
}

void ScaleBoard::choose(int row, int column) {
    if (row < 0 || row >= rowCount || column < 0 || column >= keyCount) return;
    chosen_ = Cell{row + 1, order().at(static_cast<std::size_t>(column))};
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
