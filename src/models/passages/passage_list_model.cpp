// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/passages/passage_list_model.h"

#include "models/text/formatter.h"
#include "models/text/id_text.h"
#include "practice/log/practice_book.h"
#include "text/passage_title.h"

#include <algorithm>
#include <array>
#include <unordered_map>
#include <utility>

namespace piolo::models {

namespace {

constexpr std::array orders{std::pair{PassageOrder::due, "due"},
                            std::pair{PassageOrder::notPlayed, "notPlayed"},
                            std::pair{PassageOrder::farFromTarget, "farFromTarget"}};

Id idOf(const QString& text) { return Id::parse(text.toStdString()).value_or(Id{}); }

bool sameOrder(const std::vector<PassageRow>& a, const std::vector<PassageRow>& b) {
    return std::equal(a.begin(), a.end(), b.begin(), b.end(), [](const PassageRow& x, const PassageRow& y) {
        return x.id == y.id && x.piece == y.piece;
    });
}

} // namespace

PassageListModel::PassageListModel(practice::PracticeBook& book, QObject* parent)
    : QAbstractListModel(parent), book_(book) {
    connect(&book, &practice::PracticeBook::changed, this, &PassageListModel::refresh);
    refresh();
}

int PassageListModel::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : count(); }

QVariant PassageListModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid)) return {};
    const PassageRow& row = rows_[static_cast<std::size_t>(index.row())];
    switch (role) {
    case PassageId:
        return idText(row.id);
    case Qt::DisplayRole:
    case Title:
        return row.title;
    case Section:
        return sectionOf(row);
    case PieceName:
        return row.pieceName;
    case Bars:
        return row.bars;
    case TempoText:
        return row.tempo;
    case TargetText:
        return row.target;
    case SubdivisionText:
        return row.subdivision;
    case StandingText:
        return row.standing;
    case Share:
        return row.share;
    case Streak:
        return row.streak;
    case CleanRuns:
        return row.cleanRuns;
    case Secure:
        return row.secure;
    case Removed:
        return row.removed;
    case Due:
        return dueText(row);
    case Spoken:
        return spoken(row);
    default:
        return {};
    }
}

QHash<int, QByteArray> PassageListModel::roleNames() const {
    return {{PassageId, "passageId"},
            {Title, "title"},
            {Section, "section"},
            {PieceName, "pieceName"},
            {Bars, "bars"},
            {TempoText, "tempoText"},
            {TargetText, "targetText"},
            {SubdivisionText, "subdivisionText"},
            {StandingText, "standingText"},
            {Share, "share"},
            {Streak, "streak"},
            {CleanRuns, "cleanRuns"},
            {Secure, "secure"},
            {Removed, "removed"},
            {Due, "due"},
            {Spoken, "spoken"}};
}

void PassageListModel::setSearch(const QString& search) {
    if (search == search_) return;
    search_ = search;
    emit searchChanged();
    refresh();
}

QString PassageListModel::sorting() const {
    const auto* found = std::find_if(orders.begin(), orders.end(), [&](auto o) { return o.first == order_; });
    return QString::fromLatin1(found->second);
}

void PassageListModel::setSorting(const QString& sorting) {
    const auto* found = std::find_if(orders.begin(), orders.end(),
                                     [&](auto o) { return sorting == QLatin1String(o.second); });
    if (found == orders.end() || found->first == order_) return;
    beginResetModel();
    order_ = found->first;
    rows_ = wantedRows();
    endResetModel();
    emit sortingChanged();
}

void PassageListModel::setRemovedToo(bool too) {
    if (too == removedToo_) return;
    removedToo_ = too;
    emit removedTooChanged();
    refresh();
}

QString PassageListModel::lastRemoved() const {
    const PassageRecord* record = book_.notebook().passage(lastRemoved_);
    return record != nullptr ? text::passageTitle(record->passage) : QString();
}

int PassageListModel::rowOf(const QString& id) const {
    const Id wanted = idOf(id);
    const auto found =
        std::find_if(rows_.begin(), rows_.end(), [&](const PassageRow& row) { return row.id == wanted; });
    return found == rows_.end() ? -1 : static_cast<int>(found - rows_.begin());
}

QString PassageListModel::idAt(int row) const {
    return row >= 0 && row < count() ? idText(rows_[static_cast<std::size_t>(row)].id) : QString();
}

std::vector<practice::ListedPassage> PassageListModel::listed() const {
    std::vector<practice::ListedPassage> list;
    for (const PassageRow& row : rows_) list.push_back({row.id, row.removed});
    return list;
}

QString PassageListModel::sectionTitle(const QString& section) const {
    const PassageRow* row = inSection(section);
    if (row == nullptr) return {};
    return row->piece.isNone() ? qtTrId("passages.on-its-own") : row->pieceName;
}

QString PassageListModel::sectionDue(const QString& section) const {
    const PassageRow* row = inSection(section);
    if (row == nullptr || !row->due) return {};
    return qtTrId("passages.date-days").arg(dueText(*row), Formatter::daysFrom(*row->due, book_.today()));
}

void PassageListModel::remove(const QString& id) { setRemoved(id, true); }
void PassageListModel::restore(const QString& id) { setRemoved(id, false); }
void PassageListModel::restoreLast() { restore(idText(lastRemoved_)); }

void PassageListModel::setRemoved(const QString& text, bool removed) {
    const Id id = idOf(text);
    const PassageRecord* record = book_.notebook().passage(id);
    if (record == nullptr || record->removed == removed || book_.readOnly()) return;
    if (removed) lastRemoved_ = id;
    if (!removed && id == lastRemoved_) lastRemoved_ = Id{};
    book_.record(RemovalFact{id, removed});
    emit lastRemovedChanged();
}

std::vector<PassageRow> PassageListModel::wantedRows() {
    const Notebook& notebook = book_.notebook();
    std::unordered_map<Id, Piece> pieces;
    for (Piece& piece : notebook.pieces()) pieces.emplace(piece.id, std::move(piece));
    std::vector<PassageRow> rows;
    total_ = 0;
    for (const Id id : notebook.passages(removedToo_)) {
        const PassageRecord* record = notebook.passage(id);
        if (record == nullptr) continue;
        const bool isScale = record->passage.scale.has_value();
        if (!isScale && !record->removed) ++total_;
        if (isScale && search_.isEmpty()) continue; // they have a grid of their own
        const auto piece = pieces.find(record->passage.title.piece);
        PassageRow row = models::rowOf(*record, piece == pieces.end() ? nullptr : &piece->second,
                                       notebook.settings(), book_.today());
        if (matches(row, search_)) rows.push_back(std::move(row));
    }
    std::sort(rows.begin(), rows.end(),
              [this](const PassageRow& a, const PassageRow& b) { return standsBefore(a, b, order_); });
    return rows;
}

// Unchanged rows keep their delegates, and so the keyboard position in the list.
void PassageListModel::refresh() {
    std::vector<PassageRow> wanted = wantedRows();
    if (!sameOrder(wanted, rows_)) {
        beginResetModel();
        rows_ = std::move(wanted);
        endResetModel();
        emit countChanged();
        return;
    }
    for (std::size_t i = 0; i < wanted.size(); ++i) {
        if (wanted[i] == rows_[i]) continue;
        rows_[i] = std::move(wanted[i]);
        const QModelIndex changed = index(static_cast<int>(i));
        emit dataChanged(changed, changed);
    }
    emit countChanged();
}

QString PassageListModel::sectionOf(const PassageRow& row) const {
    if (order_ != PassageOrder::due) return {};
    return row.piece.isNone() ? QStringLiteral("own") : idText(row.piece);
}

QString PassageListModel::dueText(const PassageRow& row) const {
    return row.due ? Formatter::date(*row.due, book_.today()) : QString();
}

QString PassageListModel::spoken(const PassageRow& row) const {
    const QString piece = row.piece.isNone() ? qtTrId("passages.on-its-own.inline") : row.pieceName;
    return qtTrId("passages.spoken")
        .arg(row.title, piece, row.bars, row.tempo, row.target, Formatter::streak(row.streak, row.cleanRuns),
             row.standing);
}

const PassageRow* PassageListModel::inSection(const QString& section) const {
    const auto found = std::find_if(rows_.begin(), rows_.end(),
                                    [&](const PassageRow& row) { return sectionOf(row) == section; });
    return found == rows_.end() || section.isEmpty() ? nullptr : &*found;
}

} // namespace piolo::models
