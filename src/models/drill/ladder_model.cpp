// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/drill/ladder_model.h"

#include "core/rule/ladder.h"
#include "models/text/formatter.h"

#include <algorithm>

namespace piolo::models {

int LadderModel::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : count(); }

QVariant LadderModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const Tempo rung = rungs_[static_cast<std::size_t>(index.row())];
    switch (role) {
    case Qt::DisplayRole:
    case tempoRole:
        return Formatter::tempo(rung);
    case presentRole:
        return rung == present_;
    case targetRole:
        return rung == tempi_.rule.target;
    case bestRole:
        return best_ == rung;
    case startRole:
        return rung == tempi_.start;
    default:
        return {};
    }
}

QHash<int, QByteArray> LadderModel::roleNames() const {
    return {{tempoRole, "tempo"},
            {presentRole, "present"},
            {targetRole, "target"},
            {bestRole, "best"},
            {startRole, "start"}};
}

int LadderModel::presentRow() const {
    const auto found = std::find(rungs_.begin(), rungs_.end(), present_);
    return found == rungs_.end() ? -1 : static_cast<int>(found - rungs_.begin());
}

// The start and the best are shown even if no step reaches them exactly.
std::vector<Tempo> LadderModel::wanted(std::optional<Tempo> best) const {
    std::vector<Tempo> ladder = rungs(tempi_.rule, present_);
    if (best) ladder.push_back(*best);
    ladder.push_back(tempi_.start);
    std::sort(ladder.begin(), ladder.end());
    ladder.erase(std::unique(ladder.begin(), ladder.end()), ladder.end());
    return ladder;
}

void LadderModel::show(const Tempi& tempi, Tempo present, std::optional<Tempo> best) {
    tempi_ = tempi;
    present_ = present;
    best_ = best;
    std::vector<Tempo> ladder = wanted(best);
    if (ladder == rungs_) {
        if (!rungs_.empty()) emit dataChanged(index(0), index(count() - 1));
    } else {
        beginResetModel();
        rungs_ = std::move(ladder);
        endResetModel();
    }
    emit climbed();
}

} // namespace piolo::models
