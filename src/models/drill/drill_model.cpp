// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/drill/drill_model.h"

#include "models/keys/event_moment.h"
#include "models/text/typed_values.h"
#include "practice/figures/first_runs.h"

namespace piolo::models {

namespace {

using Control = practice::DrillControl;

constexpr int tickMillis = 8;

static_assert(static_cast<int>(DrillModel::State::Paused) == static_cast<int>(Control::State::paused));
static_assert(static_cast<int>(DrillModel::PauseKind::BelowStart) ==
              static_cast<int>(engine::Pause::belowStart));
static_assert(static_cast<int>(DrillModel::Feedback::PutBack) ==
              static_cast<int>(Control::Feedback::putBack));

} // namespace

DrillModel::DrillModel(practice::PracticeBook& book, practice::DrillControl& control, QObject* parent)
    : CurveSource(parent), book_(book), control_(control), text_(book, control), listening_(control),
      playedAs_(book) {
    timer_.setTimerType(Qt::PreciseTimer);
    timer_.setInterval(tickMillis);
    connect(&timer_, &QTimer::timeout, this, &DrillModel::tick);
    connect(&control_, &Control::opened, this, &DrillModel::showPassage);
    connect(&control_, &Control::recordChanged, this, &DrillModel::showPassage);
    connect(&control_, &Control::stateChanged, this, &DrillModel::showState);
    connect(&control_, &Control::standingChanged, this, &DrillModel::showStanding);
    connect(&control_, &Control::feedbackChanged, this, &DrillModel::feedbackChanged);
    connect(&control_, &Control::restChanged, this, &DrillModel::restChanged);
    connect(&control_, &Control::barsChanged, this, &DrillModel::showBars);
    connect(&control_, &Control::pulsed, &beats_, &BeatView::sound);
    connect(&control_, &Control::breathed, &beats_, &BeatView::breathe);
    connect(&control_, &Control::fellSilent, &beats_, &BeatView::rest);
    connect(this, &DrillModel::passageChanged, this, &DrillModel::curveChanged);
    connect(this, &DrillModel::stateChanged, this, &DrillModel::curveChanged);
    connect(&playedAs_, &PlayedAs::felt, this, [this] { control_.forgetHand(); });
    showPassage();
    showState();
    showBars();
}

void DrillModel::open(const QString& passage) {
    if (const auto id = Id::parse(passage.toStdString())) control_.open(*id);
}

void DrillModel::showPassage() {
    const PassageRecord* known = control_.record();
    staff_.show(known == nullptr ? std::nullopt : std::optional(staffOf(known->passage)));
    if (known != nullptr) {
        stages_.show(practice::figuresOf(book_.notebook(), *known, book_.today()));
    }
    emit passageChanged();
    emit restChanged();
    showStanding();
}

void DrillModel::showState() {
    if (control_.isBusy() != timer_.isActive()) control_.isBusy() ? timer_.start() : timer_.stop();
    emit stateChanged();
    emit restChanged();
    showStanding();
}

void DrillModel::showStanding() {
    if (const PassageRecord* known = control_.record()) {
        const Tempo tempo = control_.standing().tempo;
        const auto articulation = static_cast<std::size_t>(known->passage.manner.articulation);
        ladder_.show(known->passage.tempi, tempo, known->bests[articulation]);
        playedAs_.show(*known, tempo, control_.state() == Control::State::stopped);
    }
    emit standingChanged();
}

void DrillModel::showBars() {
    if (control_.record() == nullptr) return;
    const Passage played = control_.played();
    beats_.show(played.music, played.click);
}

bool DrillModel::legend() const { return legendAsked_ || practice::isNew(book_.notebook()); }

void DrillModel::showLegend() {
    legendAsked_ = true;
    emit passageChanged();
}

void DrillModel::setStage(int stage) {
    if (stage >= 0 && stage < StageFigures::names().size()) control_.setStage(static_cast<Stage>(stage));
}

void DrillModel::missAt(quint64 stamp) {
    if (state() == State::Playing) control_.strike(eventMoment(stamp, control_.nowNanos()));
}

bool DrillModel::typeTempo(const QString& tempo) {
    const auto typed = readTempo(tempo);
    if (typed) control_.setTempo(*typed);
    return typed.has_value();
}

void DrillModel::tapAt(quint64 stamp) { control_.tap(eventMoment(stamp, control_.nowNanos())); }

void DrillModel::wantShorter() {
    control_.stop();
    emit wantsEdit(passageText(), true);
}

QString DrillModel::passageText() const {
    return control_.passage().isNone() ? QString() : QString::fromStdString(control_.passage().text());
}

int DrillModel::cleanRuns() const {
    const PassageRecord* known = control_.record();
    return known == nullptr ? 0 : known->passage.tempi.rule.cleanRuns;
}

} // namespace piolo::models
