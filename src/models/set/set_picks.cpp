// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/set/set_picks.h"

#include "practice/set/set_control.h"

#include <algorithm>

namespace piolo::models {

SetPicks::SetPicks(practice::PracticeBook& book, QObject* parent) : QAbstractListModel(parent), book_(book) {
    connect(&book, &practice::PracticeBook::changed, this, &SetPicks::refresh);
    refresh();
}

int SetPicks::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : count(); }

QVariant SetPicks::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid)) return {};
    const PickRow& row = rows_[static_cast<std::size_t>(index.row())];
    switch (role) {
    case Qt::DisplayRole:
    case TitleRole:
        return row.title;
    case PieceRole:
        return row.piece;
    case PlaceRole:
        return placeOf(row.id);
    default:
        return {};
    }
}

QHash<int, QByteArray> SetPicks::roleNames() const {
    return {{TitleRole, "title"}, {PieceRole, "piece"}, {PlaceRole, "place"}};
}

int SetPicks::placeOf(Id passage) const {
    const auto found = std::ranges::find(order_, passage);
    return found == order_.end() ? 0 : static_cast<int>(found - order_.begin()) + 1;
}

bool SetPicks::pick(int row, bool on) {
    if (row < 0 || row >= count()) return false;
    const Id id = rows_[static_cast<std::size_t>(row)].id;
    refused_ = on && placeOf(id) == 0 && order_.size() == practice::SetControl::most;
    if (!on) std::erase(order_, id);
    if (on && !refused_ && placeOf(id) == 0) order_.push_back(id);
    emit dataChanged(index(0), index(count() - 1), {PlaceRole}); // the later ones move up
    emit changed();
    return !refused_;
}

void SetPicks::refresh() {
    std::vector<PickRow> rows = pickRows(book_);
    if (rows == rows_) return;
    beginResetModel();
    rows_ = std::move(rows);
    std::erase_if(order_, [&](Id id) { return std::ranges::find(rows_, id, &PickRow::id) == rows_.end(); });
    refused_ = false;
    endResetModel();
    emit changed();
}

} // namespace piolo::models
