// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/passages/passage_picks.h"

#include "models/text/formatter.h"
#include "models/text/id_text.h"

#include <algorithm>

namespace piolo::models {

PassagePicks::PassagePicks(practice::PracticeBook& book, QObject* parent)
    : QAbstractListModel(parent), book_(book) {
    connect(&book, &practice::PracticeBook::changed, this, &PassagePicks::refresh);
    refresh();
}

int PassagePicks::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : count(); }

QVariant PassagePicks::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid)) return {};
    const PickRow& row = rows_[static_cast<std::size_t>(index.row())];
    switch (role) {
    case Qt::DisplayRole:
    case TitleRole:
        return row.title;
    case PieceRole:
        return row.piece;
    case PickedRole:
        return picked_.contains(row.id);
    default:
        return {};
    }
}

QHash<int, QByteArray> PassagePicks::roleNames() const {
    return {{TitleRole, "title"}, {PieceRole, "piece"}, {PickedRole, "picked"}};
}

QString PassagePicks::words() const {
    const auto figures = [this](bool scale) {
        const auto is = [this, scale](const PickRow& row) { return isScale(row.id) == scale; };
        const auto both = [&](const PickRow& row) { return is(row) && picked_.contains(row.id); };
        const auto all = static_cast<int>(std::ranges::count_if(rows_, is));
        const auto ticked = QString::number(std::ranges::count_if(rows_, both));
        return qtTrId("picks.of").arg(ticked, scale ? qtTrId("picks.scales", all) : Formatter::passages(all));
    };
    return withScales_ ? qtTrId("picks.and-scales").arg(figures(false), figures(true)) : figures(false);
}

std::vector<Id> PassagePicks::ids() const {
    std::vector<Id> ids;
    for (const PickRow& row : rows_)
        if (picked_.contains(row.id)) ids.push_back(row.id);
    return ids;
}

void PassagePicks::announce() {
    if (count() > 0) emit dataChanged(index(0), index(count() - 1), {PickedRole});
    emit changed();
}

void PassagePicks::pick(int row, bool on) {
    if (row < 0 || row >= count()) return;
    const Id id = rows_[static_cast<std::size_t>(row)].id;
    if (on)
        picked_.insert(id);
    else
        picked_.erase(id);
    emit dataChanged(index(row), index(row), {PickedRole});
    emit changed();
}

void PassagePicks::pickAll(bool on) {
    picked_.clear();
    if (on)
        for (const PickRow& row : rows_) picked_.insert(row.id);
    announce();
}

void PassagePicks::setWithScales(bool with) {
    if (with == withScales_) return;
    withScales_ = with;
    refresh();
    emit changed();
}

void PassagePicks::pickOnly(const QString& passage) {
    const Id id = idOf(passage);
    picked_.clear();
    setWithScales(isScale(id));
    if (std::any_of(rows_.begin(), rows_.end(), [&](const PickRow& row) { return row.id == id; }))
        picked_.insert(id);
    announce();
}

std::vector<PickRow> PassagePicks::rowsNow() const {
    std::vector<PickRow> rows = pickRows(book_);
    if (!withScales_) std::erase_if(rows, [this](const PickRow& row) { return isScale(row.id); });
    std::ranges::stable_partition(rows, [this](const PickRow& row) { return !isScale(row.id); });
    return rows;
}

bool PassagePicks::isScale(Id id) const {
    const PassageRecord* const record = book_.notebook().passage(id);
    return record != nullptr && record->passage.scale.has_value();
}

void PassagePicks::refresh() {
    const auto passages = book_.notebook().passages();
    const auto scales =
        static_cast<int>(std::ranges::count_if(passages, [this](Id id) { return isScale(id); }));
    std::vector<PickRow> rows = rowsNow();
    if (rows == rows_ && scales == scales_) return;
    beginResetModel();
    scales_ = scales;
    rows_ = std::move(rows);
    std::erase_if(picked_, [&](Id id) {
        return std::none_of(rows_.begin(), rows_.end(), [&](const PickRow& row) { return row.id == id; });
    });
    endResetModel();
    emit changed();
}

} // namespace piolo::models
