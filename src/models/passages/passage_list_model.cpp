// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/passages/passage_list_model.h"

#include "models/passages/passage_row_text.h"
#include "models/text/id_text.h"
#include "practice/log/passage_removal.h"
#include "practice/log/practice_book.h"

#include <algorithm>
#include <array>
#include <utility>

namespace piolo::models {

namespace {

constexpr std::array orders{std::pair{PassageOrder::due, "due"},
                            std::pair{PassageOrder::notPlayed, "notPlayed"},
                            std::pair{PassageOrder::farFromTarget, "farFromTarget"}};

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
        return sectionOf(row, selection_.order);
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
        return dueText(row, book_.today());
    case Spoken:
        return spokenText(row);
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
    if (search == selection_.search) return;
    selection_.search = search;
    emit searchChanged();
    refresh();
}

QString PassageListModel::sorting() const {
    const auto* found =
        std::find_if(orders.begin(), orders.end(), [&](auto o) { return o.first == selection_.order; });
    return QString::fromLatin1(found->second);
}

void PassageListModel::setSorting(const QString& sorting) {
    const auto* found = std::find_if(orders.begin(), orders.end(),
                                     [&](auto o) { return sorting == QLatin1String(o.second); });
    if (found == orders.end() || found->first == selection_.order) return;
    beginResetModel();
    selection_.order = found->first;
    rows_ = wantedRows();
    endResetModel();
    emit sortingChanged();
}

void PassageListModel::setRemovedToo(bool too) {
    if (too == selection_.removedToo) return;
    selection_.removedToo = too;
    emit removedTooChanged();
    refresh();
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
    const PassageRow* const row = inSection(section);
    return row == nullptr ? QString() : models::sectionTitle(*row);
}

QString PassageListModel::sectionDue(const QString& section) const {
    const PassageRow* const row = inSection(section);
    return row == nullptr ? QString() : models::sectionDue(*row, book_.today());
}

void PassageListModel::remove(const QString& id) { practice::setRemoved(book_, idOf(id), true); }

void PassageListModel::restore(const QString& id) { practice::setRemoved(book_, idOf(id), false); }

std::vector<PassageRow> PassageListModel::wantedRows() {
    PassageRows selected = selectedRows(book_.notebook(), selection_, book_.today());
    total_ = selected.total;
    ++changes_;
    return std::move(selected.rows);
}

void PassageListModel::refresh() {
    std::vector<PassageRow> wanted = wantedRows();
    const auto changes = rowChanges(rows_, wanted);
    if (changes) {
        apply(*changes, wanted);
    } else {
        beginResetModel();
        rows_ = std::move(wanted);
        endResetModel();
    }
    emit countChanged();
}

// Unchanged rows keep their delegates, and so the keyboard position in the list.
void PassageListModel::apply(const RowChanges& changes, std::vector<PassageRow>& wanted) {
    for (const RowRun& run : changes.removed) {
        beginRemoveRows({}, run.first, run.last);
        rows_.erase(rows_.begin() + run.first, rows_.begin() + run.last + 1);
        endRemoveRows();
    }
    for (const RowRun& run : changes.inserted) {
        beginInsertRows({}, run.first, run.last);
        rows_.insert(rows_.begin() + run.first, wanted.begin() + run.first, wanted.begin() + run.last + 1);
        endInsertRows();
    }
    for (std::size_t i = 0; i < wanted.size(); ++i) {
        if (wanted[i] == rows_[i]) continue;
        rows_[i] = std::move(wanted[i]);
        const QModelIndex changed = index(static_cast<int>(i));
        emit dataChanged(changed, changed);
    }
}

const PassageRow* PassageListModel::inSection(const QString& section) const {
    const auto found = std::find_if(rows_.begin(), rows_.end(), [&](const PassageRow& row) {
        return sectionOf(row, selection_.order) == section;
    });
    return found == rows_.end() || section.isEmpty() ? nullptr : &*found;
}

} // namespace piolo::models
