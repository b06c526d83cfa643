// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/log_model.h"

#include "models/formatter.h"
#include "models/log_choices.h"
#include "models/log_curves.h"
#include "models/log_lines.h"
#include "models/practice_book.h"

#include <algorithm>

namespace piolo::models {

namespace {

QString textOf(Id id) { return id.isNone() ? QString() : QString::fromStdString(id.text()); }
Id idOf(const QString& text) { return Id::parse(text.toStdString()).value_or(Id{}); }

QVariantMap entryMap(const PassageRecord& record, const Entry& entry) {
    const LogLine alone{&record, {&entry}};
    const QString detail = effectWords(alone);
    return {{QStringLiteral("entry"), textOf(entry.id)},
            {QStringLiteral("passage"), textOf(record.passage.id)},
            {QStringLiteral("time"), Formatter::timeOfDay(entry.at)},
            {QStringLiteral("tempo"), Formatter::tempo(entry.tempo)},
            {QStringLiteral("marks"), markShapes(alone)},
            {QStringLiteral("mark"), markWords(entry)},
            {QStringLiteral("detail"), detail}};
}

} // namespace

LogModel::LogModel(PracticeBook& book, QObject* parent) : QAbstractListModel(parent), book_(book) {
    connect(&book, &PracticeBook::changed, this, &LogModel::follow);
}

int LogModel::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : count(); }

QVariant LogModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid)) return {};
    const LogDay& day = days_[static_cast<std::size_t>(index.row())];
    switch (role) {
    case Qt::DisplayRole:
    case DayTitle:
        return Formatter::weekday(day.date, book_.today());
    case Figures:
        return figuresText(day);
    case Lines:
        return lineMaps(day);
    default:
        return {};
    }
}

QHash<int, QByteArray> LogModel::roleNames() const {
    return {{DayTitle, "dayTitle"}, {Figures, "figures"}, {Lines, "lines"}};
}

void LogModel::setShown(bool shown) {
    if (shown == shown_) return;
    shown_ = shown;
    emit shownChanged();
    follow();
}

bool LogModel::readOnly() const { return book_.readOnly(); }
QString LogModel::piece() const { return textOf(filter_.piece); }
QString LogModel::passage() const { return textOf(filter_.passage); }
QString LogModel::kind() const { return wordOf(filter_.kind); }
QVariantList LogModel::kinds() { return kindChoices(); }
QVariantList LogModel::stretches() { return stretchChoices(); }
Date LogModel::today() const { return book_.today(); }
std::vector<plots::CurveSeries> LogModel::curves(plots::CurveBy by) const {
    return curvesOf(book_.notebook(), filter_, by);
}
QVariantList LogModel::pieces() const { return pieceChoices(book_.notebook()); }
QVariantList LogModel::passages() const { return passageChoices(book_.notebook(), filter_.piece); }

void LogModel::setPiece(const QString& piece) {
    LogFilter wanted = filter_;
    wanted.piece = idOf(piece);
    const PassageRecord* const record = book_.notebook().passage(filter_.passage);
    // A passage of another piece would leave nothing to see.
    if (record != nullptr && !wanted.piece.isNone() && record->passage.title.piece != wanted.piece)
        wanted.passage = {};
    filterBy(wanted);
}

void LogModel::setPassage(const QString& passage) {
    LogFilter wanted = filter_;
    wanted.passage = idOf(passage);
    filterBy(wanted);
}

void LogModel::setKind(const QString& kind) {
    LogFilter wanted = filter_;
    wanted.kind = kindOf(kind);
    filterBy(wanted);
}

void LogModel::setSince(const QString& since) {
    since_ = since;
    LogFilter wanted = filter_;
    wanted.from = firstDay(since, book_.today());
    filterBy(wanted);
}

void LogModel::filterBy(const LogFilter& filter) {
    if (filter == filter_) return;
    filter_ = filter;
    emit filterChanged();
    follow();
}

// While it is not shown the log costs nothing.
void LogModel::follow() {
    if (shown_) refresh();
}

void LogModel::refresh() {
    std::vector<LogDay> wanted = logDays(book_.notebook(), filter_);
    nothingYet_ = wanted.empty() && (filter_ == LogFilter{} || logDays(book_.notebook(), {}).empty());
    const bool sameDays = std::equal(wanted.begin(), wanted.end(), days_.begin(), days_.end(),
                                     [](const LogDay& a, const LogDay& b) { return a.date == b.date; });
    // Days that stay where they are keep their place on the screen.
    if (sameDays && !wanted.empty()) {
        days_ = std::move(wanted);
        emit dataChanged(index(0), index(count() - 1));
    } else {
        beginResetModel();
        days_ = std::move(wanted);
        endResetModel();
    }
    emit refreshed();
}

QString LogModel::titleOf(const PassageRecord& record) const {
    const QString title = QString::fromStdString(record.passage.title.name);
    return record.removed ? tr("%1 (removed)", "a passage").arg(title) : title;
}

QVariantList LogModel::lineMaps(const LogDay& day) const {
    QVariantList maps;
    for (const LogLine& line : linesOf(book_.notebook(), day, filter_)) {
        const Entry& first = *line.entries.front();
        const QString time = Formatter::timeOfDay(first.at);
        const QString title = titleOf(*line.record);
        const QString tempo = Formatter::tempo(first.tempo);
        const QString effect = effectWords(line);
        const QString spoken = tr("%1, %2, at %3, %4, %5", "time, passage, tempo, marks, what it did")
                                   .arg(time, title, tempo, markCounts(line), effect);
        maps.append(QVariantMap{{QStringLiteral("time"), time},
                                {QStringLiteral("title"), title},
                                {QStringLiteral("tempo"), tempo},
                                {QStringLiteral("marks"), markShapes(line)},
                                {QStringLiteral("effect"), effect},
                                {QStringLiteral("spoken"), spoken}});
    }
    return maps;
}

QString LogModel::figuresText(const LogDay& day) const {
    const LogDayFigures figures = figuresOf(linesOf(book_.notebook(), day, filter_));
    const QString time = Formatter::duration(figures.millis);
    if (figures.runs == 0) return figures.millis == 0 ? QString() : time;
    return tr("%1 · %2 of %3 clean", "time played · clean runs of all")
        .arg(time, QLocale().toString(figures.clean), QLocale().toString(figures.runs));
}

QVariantList LogModel::entriesOf(int day, int line) const {
    if (day < 0 || day >= count()) return {};
    const auto lines = linesOf(book_.notebook(), days_[static_cast<std::size_t>(day)], filter_);
    if (line < 0 || static_cast<std::size_t>(line) >= lines.size()) return {};
    const LogLine& wanted = lines[static_cast<std::size_t>(line)];
    QVariantList maps;
    for (const Entry* entry : wanted.entries) maps.append(entryMap(*wanted.record, *entry));
    return maps;
}

void LogModel::takeBack(const QString& passage, const QString& entry) {
    const Id wanted = idOf(entry);
    const PassageRecord* const record = book_.notebook().passage(idOf(passage));
    if (record == nullptr || book_.readOnly()) return;
    const bool stands = std::any_of(record->entries.begin(), record->entries.end(),
                                    [wanted](const Entry& its) { return its.id == wanted; });
    if (stands) book_.record(BackFact{record->passage.id, wanted});
}

} // namespace piolo::models
