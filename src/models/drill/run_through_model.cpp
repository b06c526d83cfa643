// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/drill/run_through_model.h"

#include "models/text/formatter.h"
#include "models/text/typed_values.h"
#include "text/number_words.h"

#include <algorithm>

namespace piolo::models {

namespace {

constexpr int clockTickMillis = 200;
constexpr std::int64_t nanosInMilli = 1'000'000;
constexpr std::int64_t thousandthsMinute = 60'000'000; // milliseconds in a minute, in thousandths
constexpr std::size_t mostShown = 50;

QString minutesText(std::int64_t millis) {
    const auto seconds = millis / 1000;
    return QStringLiteral("%1:%2").arg(seconds / 60).arg(seconds % 60, 2, 10, QLatin1Char('0'));
}

/// 0 for an unknown bar; nothing for an invalid one.
std::optional<int> barTyped(const QString& bar) {
    return bar.trimmed().isEmpty() ? 0 : readCount(bar, 0, Piece::mostBars);
}

QString stopsText(const RunThroughFact& played) {
    const auto stops = static_cast<int>(played.stops.size());
    const QString counted = text::stopsWord(stops);
    return played.finished ? counted : qtTrId("run-through.unfinished").arg(counted);
}

} // namespace

RunThroughModel::RunThroughModel(practice::PracticeBook& book, practice::SoundPort& sound, QObject* parent)
    : QObject(parent), book_(book), sound_(sound) {
    timer_.setInterval(clockTickMillis);
    connect(&timer_, &QTimer::timeout, this, &RunThroughModel::ticked);
    connect(&book_, &practice::PracticeBook::changed, this, &RunThroughModel::changed);
}

std::optional<Piece> RunThroughModel::piece() const {
    if (id_.isNone()) return std::nullopt;
    return book_.notebook().piece(id_);
}

QString RunThroughModel::title() const {
    const auto known = piece();
    return known ? QString::fromStdString(known->name) : QString();
}

std::int64_t RunThroughModel::played() const {
    return state_ == State::Playing ? (sound_.nowNanos() - began_) / nanosInMilli : millis_;
}

QString RunThroughModel::clock() const { return minutesText(played()); }

// The number of whole bars that have passed at the piece's tempo; pieces do not state a pick-up.
std::optional<std::int32_t> RunThroughModel::barAt(std::int64_t millis) const {
    const auto known = piece();
    if (!known || !known->music.tempo) return std::nullopt;
    const std::int64_t beats = millis * known->music.tempo->thousandths() / thousandthsMinute;
    const std::int64_t bar = 1 + beats / known->music.meter.beatsPerBar();
    const std::int64_t last = known->bars > 0 ? known->bars : Piece::mostBars;
    return static_cast<std::int32_t>(std::min(bar, last));
}

QString RunThroughModel::place() const {
    const auto bar = state_ == State::Playing ? barAt(played()) : std::nullopt;
    return bar ? qtTrId("run-through.about-bar").arg(*bar) : QString();
}

QVariantList RunThroughModel::stops() const {
    QVariantList list;
    for (const Halt& halt : halts_)
        list << QVariantMap{{"time", minutesText(halt.millis)}, {"bar", halt.bar}};
    return list;
}

QString RunThroughModel::counted() const { return text::stopsWord(static_cast<int>(halts_.size())); }

QString RunThroughModel::fault() const {
    const bool good = std::all_of(halts_.begin(), halts_.end(),
                                  [](const Halt& halt) { return barTyped(halt.bar).has_value(); });
    return good ? QString() : qtTrId("run-through.fault.bar").arg(Piece::mostBars);
}

QVariantList RunThroughModel::past() const {
    QVariantList list;
    const auto all = book_.notebook().runThroughs(id_);
    for (auto through = all.rbegin(); through != all.rend() && std::cmp_less(list.size(), mostShown);
         ++through)
        list << QVariantMap{{"day", Formatter::date(through->at.date(), book_.today())},
                            {"length", minutesText(through->played.millis)},
                            {"stops", stopsText(through->played)}};
    return list;
}

void RunThroughModel::open(const QString& piece) {
    if (state_ != State::Ready) return;
    id_ = Id::parse(piece.toStdString()).value_or(Id{});
    emit changed();
}

void RunThroughModel::turnTo(State state) {
    state_ = state;
    if (state == State::Playing)
        timer_.start();
    else
        timer_.stop();
    emit changed();
    emit ticked();
}

void RunThroughModel::start() {
    if (state_ != State::Ready || !isOpen()) return;
    began_ = sound_.nowNanos();
    halts_.clear();
    turnTo(State::Playing);
}

void RunThroughModel::markStop() {
    if (state_ != State::Playing || halts_.size() >= RunThroughFact::mostStops) return;
    const auto bar = barAt(played());
    halts_.push_back({played(), bar ? QString::number(*bar) : QString()});
    emit changed();
}

void RunThroughModel::takeBackStop() {
    if (state_ != State::Playing || halts_.empty()) return;
    halts_.pop_back();
    emit changed();
}

void RunThroughModel::pedal(const practice::PedalAct& act) {
    using Act = practice::PedalAct::Kind;
    if (act.kind == Act::press) return start();
    if (act.kind == Act::mark) return markStop();
    if (act.marked) takeBackStop(); // the press that marked it is void
    if (act.kind == Act::held) return finish(true);
    takeBackStop();
}

void RunThroughModel::finish(bool reachedTheEnd) {
    if (state_ != State::Playing) return;
    millis_ = played();
    finished_ = reachedTheEnd;
    turnTo(State::Review);
}

void RunThroughModel::setBar(int stop, const QString& bar) {
    if (stop < 0 || std::cmp_greater_equal(stop, halts_.size())) return;
    halts_[static_cast<std::size_t>(stop)].bar = bar;
    emit changed();
}

void RunThroughModel::keep() {
    if (state_ != State::Review || !fault().isEmpty() || book_.readOnly()) return;
    RunThroughFact fact{id_, {}, millis_, finished_, {}};
    for (const Halt& halt : halts_) fact.stops.push_back({*barTyped(halt.bar), halt.millis});
    book_.record(std::move(fact));
    discard();
}

void RunThroughModel::discard() {
    if (state_ != State::Review) return;
    halts_.clear();
    millis_ = 0;
    turnTo(State::Ready);
}

} // namespace piolo::models
