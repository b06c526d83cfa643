// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/drill/run_through_model.h"

#include "models/text/formatter.h"
#include "models/text/id_text.h"
#include "models/text/typed_values.h"
#include "text/number_words.h"
#include "text/one_line.h"

#include <utility>

namespace piolo::models {

namespace {

constexpr int clockTickMillis = 200;
constexpr std::size_t mostShown = 50;

static_assert(static_cast<int>(RunThroughModel::State::Review) ==
              static_cast<int>(practice::RunThroughControl::State::review));

QString minutesText(std::int64_t millis) {
    const auto seconds = millis / 1000;
    return QStringLiteral("%1:%2").arg(seconds / 60).arg(seconds % 60, 2, 10, QLatin1Char('0'));
}

/// 0 for an unknown bar; nothing for an invalid one.
std::optional<std::int32_t> barTyped(const QString& bar) {
    return bar.trimmed().isEmpty() ? 0 : readCount(bar, 0, Piece::mostBars);
}

QString stopsText(const RunThroughFact& played) {
    const auto stops = static_cast<int>(played.stops.size());
    const QString counted = text::stopsWord(stops);
    return played.finished ? counted : qtTrId("run-through.unfinished").arg(counted);
}

} // namespace

RunThroughModel::RunThroughModel(practice::PracticeBook& book, practice::RunThroughControl& control,
                                 QObject* parent)
    : QObject(parent), book_(book), control_(control) {
    timer_.setInterval(clockTickMillis);
    connect(&timer_, &QTimer::timeout, &control_, &practice::RunThroughControl::tick);
    connect(&timer_, &QTimer::timeout, this, &RunThroughModel::ticked);
    connect(&book_, &practice::PracticeBook::changed, this, &RunThroughModel::changed);
    connect(&control_, &practice::RunThroughControl::opened, this, &RunThroughModel::changed);
    connect(&control_, &practice::RunThroughControl::stopsChanged, this, &RunThroughModel::changed);
    connect(&control_, &practice::RunThroughControl::stateChanged, this, &RunThroughModel::followState);
}

void RunThroughModel::followState() {
    if (state() == State::Playing)
        timer_.start();
    else
        timer_.stop();
    typed_.clear();
    emit changed();
    emit ticked();
}

QString RunThroughModel::title() const {
    const auto known = control_.piece();
    return known ? text::nameShown(known->name) : QString();
}

QString RunThroughModel::clock() const { return minutesText(control_.millis()); }

QString RunThroughModel::nowText() const {
    if (state() == State::Playing) return qtTrId("run-through.now").arg(clock());
    return state() == State::Review ? qtTrId("run-through.now-review") : QString();
}

QString RunThroughModel::place() const {
    const auto bar = control_.bar();
    return bar ? qtTrId("run-through.about-bar").arg(*bar) : QString();
}

QString RunThroughModel::barText(int stop) const {
    if (const auto typed = typed_.find(stop); typed != typed_.end()) return typed->second;
    const auto bar = control_.stops()[static_cast<std::size_t>(stop)].bar.value_or(0);
    return bar == 0 ? QString() : QString::number(bar);
}

QVariantList RunThroughModel::stops() const {
    QVariantList list;
    for (const practice::RunThroughControl::ReviewedStop& stop : control_.stops())
        list << QVariantMap{{"time", minutesText(stop.millis)},
                            {"bar", barText(static_cast<int>(list.size()))}};
    return list;
}

QString RunThroughModel::counted() const {
    return text::stopsWord(static_cast<int>(control_.stops().size()));
}

QString RunThroughModel::fault() const {
    return control_.allBarsValid() ? QString() : qtTrId("run-through.fault.bar").arg(Piece::mostBars);
}

QVariantList RunThroughModel::past() const {
    QVariantList list;
    const auto all = book_.notebook().runThroughs(control_.pieceId());
    for (auto through = all.rbegin(); through != all.rend() && std::cmp_less(list.size(), mostShown);
         ++through)
        list << QVariantMap{{"day", Formatter::date(through->at.date(), book_.today())},
                            {"length", minutesText(through->played.millis)},
                            {"stops", stopsText(through->played)}};
    return list;
}

void RunThroughModel::open(const QString& piece) { control_.open(idOf(piece)); }

void RunThroughModel::setBar(int stop, const QString& bar) {
    if (state() != State::Review || stop < 0 || std::cmp_greater_equal(stop, control_.stops().size())) return;
    typed_[stop] = bar;
    control_.setBar(static_cast<std::size_t>(stop), barTyped(bar));
}

} // namespace piolo::models
