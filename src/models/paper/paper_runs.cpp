// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/paper/paper_runs.h"

#include "core/rule/ladder.h"
#include "models/text/formatter.h"
#include "models/text/id_text.h"
#include "models/text/typed_values.h"
#include "text/one_line.h"

#include <algorithm>
#include <numeric>

namespace piolo::models {

namespace {

QVariantMap figure(const QString& label, const QString& value) {
    return {{QStringLiteral("label"), label}, {QStringLiteral("value"), value}};
}

} // namespace

PaperRuns::PaperRuns(practice::PracticeBook& book, QObject* parent)
    : QAbstractListModel(parent), book_(book) {
    connect(&book, &practice::PracticeBook::changed, this, &PaperRuns::follow);
}

int PaperRuns::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rungs_.size());
}

QVariant PaperRuns::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid)) return {};
    const PaperRung& rung = rungs_[static_cast<std::size_t>(index.row())];
    switch (role) {
    case Qt::DisplayRole:
    case TempoRole:
        return Formatter::tempo(rung.tempo);
    case TargetRole:
        return rule_ && rung.tempo == rule_->target;
    case CleanRole:
        return rung.clean;
    case MissedRole:
        return rung.missed;
    default:
        return {};
    }
}

QHash<int, QByteArray> PaperRuns::roleNames() const {
    return {{TempoRole, "tempo"}, {TargetRole, "target"}, {CleanRole, "clean"}, {MissedRole, "missed"}};
}

QString PaperRuns::title() const {
    return isOpen() ? text::onOneLine(record()->passage.title.name) : QString();
}

int PaperRuns::circles() const { return rule_ ? rule_->cleanRuns : 0; }

void PaperRuns::show(const QString& passage) {
    const Id id = idOf(passage);
    if (id == id_ && !counted().isEmpty()) return;
    if (id != id_) kept_.clear();
    id_ = id;
    startAnew();
}

void PaperRuns::startAnew() {
    lowest_ = isOpen() ? Formatter::tempo(record()->standing.tempo) : QString();
    day_ = dateForTyping(book_.today());
    layRungs();
}

void PaperRuns::layRungs() {
    beginResetModel();
    rungs_.clear();
    rule_.reset();
    if (isOpen()) rule_ = record()->passage.tempi.rule;
    const auto lowest = readTempo(lowest_);
    if (rule_ && lowest)
        for (const Tempo tempo : rungsUp(*rule_, *lowest)) rungs_.push_back({tempo});
    endResetModel();
    emit changed();
}

// Editing the rule changes the ladder; what was entered for the old one no longer fits.
void PaperRuns::follow() {
    const bool sameRule = isOpen() == rule_.has_value() && (!rule_ || *rule_ == record()->passage.tempi.rule);
    if (sameRule)
        emit changed();
    else
        layRungs();
}

void PaperRuns::setLowest(const QString& lowest) {
    if (lowest == lowest_) return;
    lowest_ = lowest;
    layRungs();
}

void PaperRuns::setDay(const QString& day) {
    day_ = day;
    emit changed();
}

QString PaperRuns::lowestFault() const {
    return readTempo(lowest_) ? QString() : qtTrId("paper.enter.fault.tempo");
}

std::optional<Date> PaperRuns::date() const { return readDate(day_); }

QString PaperRuns::dayFault() const {
    if (!isOpen()) return {};
    const auto day = date();
    const auto last = record()->lastDay;
    if (!day) return qtTrId("paper.enter.fault.day").arg(dateForTyping(book_.today()));
    if (*day > book_.today()) return qtTrId("paper.enter.fault.future");
    if (last && *day < *last)
        return qtTrId("paper.enter.fault.before").arg(Formatter::date(*last, book_.today()));
    return {};
}

QString PaperRuns::counted() const {
    const auto sum = [&](int PaperRung::*part) {
        return std::accumulate(rungs_.begin(), rungs_.end(), 0,
                               [part](int all, const PaperRung& rung) { return all + rung.*part; });
    };
    const int clean = sum(&PaperRung::clean);
    const int missed = sum(&PaperRung::missed);
    return clean + missed == 0 ? QString() : qtTrId("paper.enter.count").arg(clean).arg(missed);
}

QVariantList PaperRuns::outcome() const {
    if (!isOpen() || !date()) return {};
    const PaperOutcome after = outcomeOf(*record(), *date(), runs());
    return {figure(qtTrId("paper.enter.result.tempo"), Formatter::tempo(after.standing.tempo)),
            figure(qtTrId("paper.enter.result.streak"),
                   qtTrId("paper.enter.result.streak.of").arg(after.standing.streak).arg(circles())),
            figure(qtTrId("paper.enter.result.best"),
                   after.best ? Formatter::tempo(*after.best) : qtTrId("paper.enter.result.best.none")),
            figure(qtTrId("paper.enter.result.secures"), QString::number(after.secures))};
}

bool PaperRuns::canKeep() const {
    return isOpen() && !book_.readOnly() && !counted().isEmpty() && dayFault().isEmpty() &&
           lowestFault().isEmpty();
}

QString PaperRuns::kept() const {
    if (kept_.empty() || !counted().isEmpty()) return {};
    const auto count = static_cast<int>(kept_.size());
    return qtTrId("paper.enter.done", count);
}

void PaperRuns::setClean(int row, int count) {
    if (row < 0 || row >= rowCount()) return;
    rungs_[static_cast<std::size_t>(row)].clean = std::clamp(count, 0, circles());
    emit dataChanged(index(row), index(row), {CleanRole});
    emit changed();
}

void PaperRuns::setMissed(int row, int count) {
    if (row < 0 || row >= rowCount()) return;
    rungs_[static_cast<std::size_t>(row)].missed = std::clamp(count, 0, mostMisses);
    emit dataChanged(index(row), index(row), {MissedRole});
    emit changed();
}

void PaperRuns::keep() {
    if (!canKeep()) return;
    std::vector<FactBody> bodies;
    for (RunFact& run : runs()) bodies.emplace_back(std::move(run));
    kept_ = book_.recordAll(*date(), std::move(bodies));
    startAnew();
}

void PaperRuns::takeBack() {
    std::vector<FactBody> bodies;
    for (auto id = kept_.rbegin(); id != kept_.rend(); ++id) bodies.emplace_back(BackFact{id_, *id});
    kept_.clear();
    book_.recordAll(book_.today(), std::move(bodies));
    startAnew();
}

} // namespace piolo::models
