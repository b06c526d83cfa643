// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/log/log_model.h"

#include "models/log/log_choices.h"
#include "models/log/log_curves.h"
#include "models/log/log_lines.h"
#include "models/log/log_maps.h"
#include "models/text/formatter.h"
#include "models/text/id_text.h"
#include "plots/curve/passage_curves.h"
#include "practice/log/practice_book.h"

#include <algorithm>
#include <utility>

namespace piolo::models {

LogModel::LogModel(practice::PracticeBook& book, QObject* parent)
    : QAbstractListModel(parent), book_(book), takeBacks_(book), figures_(book), dates_(book) {
    connect(&book, &practice::PracticeBook::changed, this, &LogModel::follow);
}

int LogModel::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : count(); }

QVariant LogModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid)) return {};
    const practice::LogDay& day = days_[static_cast<std::size_t>(index.row())];
    switch (role) {
    case Qt::DisplayRole:
    case DayTitle:
        return Formatter::weekday(day.date, book_.today());
    case Figures:
        return figuresText(day);
    case Lines:
        return linesOf(index.row(), MostAtOnce);
    case LineCount:
        return static_cast<int>(linesOn(index.row()).size());
    default:
        return {};
    }
}

QHash<int, QByteArray> LogModel::roleNames() const {
    return {{DayTitle, "dayTitle"}, {Figures, "figures"}, {Lines, "lines"}, {LineCount, "lineCount"}};
}

void LogModel::setShown(bool shown) {
    if (shown == shown_) return;
    shown_ = shown;
    takeBacks_.forget();
    dates_.forget();
    emit shownChanged();
    emit takenBackChanged();
    follow();
}

bool LogModel::readOnly() const { return book_.readOnly(); }
QString LogModel::piece() const { return idText(filter_.piece); }
QString LogModel::passage() const { return idText(filter_.passage); }
QString LogModel::kind() const { return kindIn(filter_); }
QVariantList LogModel::kinds() { return kindChoices(); }
QVariantList LogModel::stretches() { return stretchChoices(); }
Date LogModel::today() const { return book_.today(); }
std::vector<plots::CurveSeries> LogModel::curves(plots::CurveBy by) const {
    return plots::curvesOf(book_.notebook(), practice::curvePassages(book_.notebook(), filter_), by);
}
std::vector<const PassageRecord*> LogModel::records(const std::vector<plots::CurveSeries>& curves) const {
    std::vector<const PassageRecord*> records;
    for (const plots::CurveSeries& series : curves)
        records.push_back(book_.notebook().passage(series.passage));
    return records;
}
QVariantList LogModel::pieces() const { return pieceChoices(book_.notebook()); }
QVariantList LogModel::passages() const { return passageChoices(book_.notebook(), filter_.piece); }

void LogModel::setPiece(const QString& piece) {
    practice::LogFilter wanted = filter_;
    wanted.piece = idOf(piece);
    const PassageRecord* const record = book_.notebook().passage(filter_.passage);
    // A passage of another piece would leave nothing to show.
    if (record != nullptr && !wanted.piece.isNone() && record->passage.title.piece != wanted.piece)
        wanted.passage = {};
    filterBy(wanted);
}

void LogModel::setPassage(const QString& passage) {
    practice::LogFilter wanted = filter_;
    wanted.passage = idOf(passage);
    filterBy(wanted);
}

void LogModel::setKind(const QString& kind) {
    practice::LogFilter wanted = filter_;
    setKindOf(wanted, kind);
    filterBy(wanted);
}

void LogModel::setSince(const QString& since) {
    since_ = since;
    practice::LogFilter wanted = filter_;
    wanted.from = firstDay(since, book_.today());
    filterBy(wanted);
}

void LogModel::filterBy(const practice::LogFilter& filter) {
    if (filter == filter_) return;
    filter_ = filter;
    emit filterChanged();
    follow();
}

// While the log is not shown, it costs nothing.
void LogModel::follow() {
    if (shown_) refresh();
}

void LogModel::refresh() {
    std::vector<practice::LogDay> wanted = practice::logDays(book_.notebook(), filter_);
    nothingYet_ = wanted.empty() &&
                  (filter_ == practice::LogFilter{} || practice::logDays(book_.notebook(), {}).empty());
    const bool sameDays =
        std::equal(wanted.begin(), wanted.end(), days_.begin(), days_.end(),
                   [](const practice::LogDay& a, const practice::LogDay& b) { return a.date == b.date; });
    // Unchanged days keep their position on the screen.
    if (sameDays && !wanted.empty()) {
        days_ = std::move(wanted);
        emit dataChanged(index(0), index(count() - 1));
    } else {
        beginResetModel();
        days_ = std::move(wanted);
        endResetModel();
    }
    figures_.read(filter_);
    dates_.read();
    emit refreshed();
}

std::vector<practice::LogLine> LogModel::linesOn(int day) const {
    if (day < 0 || day >= count()) return {};
    return practice::linesOf(book_.notebook(), days_[static_cast<std::size_t>(day)], filter_);
}

QVariantList LogModel::linesOf(int day, int most) const {
    QVariantList maps;
    for (const practice::LogLine& line : linesOn(day))
        if (maps.size() < most) maps.append(lineMap(line));
    return maps;
}

QString LogModel::figuresText(const practice::LogDay& day) const {
    const practice::LogDayFigures figures =
        practice::figuresOf(practice::linesOf(book_.notebook(), day, filter_));
    const QString time = Formatter::duration(figures.millis);
    if (figures.runs == 0) return figures.millis == 0 ? QString() : time;
    return qtTrId("log.day.figures")
        .arg(time, QLocale().toString(figures.clean), QLocale().toString(figures.runs));
}

QVariantList LogModel::entriesOf(int day, int line, int most) const {
    const auto lines = linesOn(day);
    if (line < 0 || std::cmp_greater_equal(line, lines.size())) return {};
    return entryMaps(lines[static_cast<std::size_t>(line)], most);
}

int LogModel::entryCount(int day, int line) const {
    const auto lines = linesOn(day);
    if (line < 0 || std::cmp_greater_equal(line, lines.size())) return 0;
    const practice::LogLine& found = lines[static_cast<std::size_t>(line)];
    return found.through ? 1 : static_cast<int>(found.entries.size());
}

int LogModel::lineOf(int day, const QString& entry) const {
    const Id wanted = idOf(entry);
    const auto lines = linesOn(day);
    const auto found = std::find_if(lines.begin(), lines.end(), [wanted](const practice::LogLine& line) {
        return std::any_of(line.entries.begin(), line.entries.end(),
                           [wanted](const Entry* its) { return its->id == wanted; });
    });
    return found == lines.end() ? -1 : static_cast<int>(found - lines.begin());
}

} // namespace piolo::models
