// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/room/key_dispatch.h"

namespace piolo::models {

KeyDispatch::KeyDispatch(practice::DrillControl& drill, Listening& listening,
                         practice::RunThroughControl& runThrough, practice::ClickControl& click,
                         LogFigures& figures, QObject* parent)
    : QObject(parent), drill_(drill), listening_(listening), runThrough_(runThrough), click_(click),
      figures_(figures) {}

KeyScope KeyDispatch::scope() const {
    const KeyScope scope = screen_ == nullptr ? KeyScope::none : screen_->keys;
    if (scope == KeyScope::drill && drill_.record() == nullptr) return KeyScope::none;
    // During the review, keys go to its fields and buttons.
    if (scope == KeyScope::runThrough && runThrough_.state() == practice::RunThroughControl::State::review)
        return KeyScope::none;
    return scope;
}

// The keys of a click leave its controls alone, also while it sounds.
bool KeyDispatch::isUrgent() const {
    if (scope() == KeyScope::click) return false;
    return scope() == KeyScope::runThrough
               ? runThrough_.state() == practice::RunThroughControl::State::playing
               : drill_.state() == practice::DrillControl::State::playing;
}

bool KeyDispatch::marksAtOnce() const {
    if (scope() == KeyScope::click) return true;
    return scope() == KeyScope::runThrough ? runThrough_.marksAtOnce() : drill_.marksAtOnce();
}

void KeyDispatch::act(KeyAction action, qint64 nanos) {
    if (scope() == KeyScope::runThrough) return actInRunThrough(action);
    if (scope() == KeyScope::set) return emit setWanted();
    if (scope() == KeyScope::click) return actInClick(action, nanos);
    switch (action) {
    case KeyAction::mark:
        return drill_.strike(nanos);
    case KeyAction::clean:
        return drill_.markClean(nanos);
    case KeyAction::back:
        return drill_.takeBack();
    case KeyAction::faster:
        return drill_.faster();
    case KeyAction::slower:
        return drill_.slower();
    case KeyAction::stop:
        if (!drill_.isBusy() && drill_.state() == practice::DrillControl::State::stopped)
            emit nothingToStop();
        return drill_.stop();
    case KeyAction::attempt:
        return drill_.begin(RunKind::attempt);
    case KeyAction::hear:
        return listening_.toggle();
    case KeyAction::next:
        emit nextWanted();
        return;
    case KeyAction::stretch:
        return makeStretch();
    case KeyAction::save:
        emit formToBeDrilled();
        return;
    case KeyAction::click:
        if (drill_.state() != practice::DrillControl::State::playing) emit clickWanted();
        return;
    case KeyAction::tap:
        return drill_.tap(nanos);
    case KeyAction::pedal: // its timing matters: see actByPedal()
        return;
    }
}

// Only once, and only if the log offers it.
void KeyDispatch::makeStretch() {
    if (!figures_.stretchText().isEmpty() && figures_.madeText().isEmpty()) figures_.makeStretch();
}

void KeyDispatch::actInRunThrough(KeyAction action) {
    const bool playing = runThrough_.state() == practice::RunThroughControl::State::playing;
    if (action == KeyAction::mark) return playing ? runThrough_.markStop() : runThrough_.start();
    if (action == KeyAction::back) return runThrough_.takeBackStop();
    if (action == KeyAction::clean) return runThrough_.finish(true);
    if (action == KeyAction::stop) return runThrough_.finish(false);
}

void KeyDispatch::actInClick(KeyAction action, qint64 nanos) {
    if (action == KeyAction::mark) return click_.toggle();
    if (action == KeyAction::stop) return click_.stop();
    if (action == KeyAction::tap) return click_.tap(nanos);
    if (action == KeyAction::faster) return click_.nudge(1);
    if (action == KeyAction::slower) return click_.nudge(-1);
}

void KeyDispatch::actByPedal(const practice::PedalAct& act) {
    if (scope() == KeyScope::runThrough) return runThrough_.pedal(act);
    if (scope() == KeyScope::drill) return drill_.pedal(act);
    if (scope() == KeyScope::set && act.kind == practice::PedalAct::Kind::press) emit setWanted();
    if (scope() == KeyScope::click) return click_.pedal(act);
}

} // namespace piolo::models
