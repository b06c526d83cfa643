// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/room/key_dispatch.h"

namespace piolo::models {

KeyDispatch::KeyDispatch(practice::DrillControl& drill, Listening& listening,
                         practice::RunThroughControl& runThrough, LogFigures& figures, QObject* parent)
    : QObject(parent), drill_(drill), listening_(listening), runThrough_(runThrough), figures_(figures) {}

KeyScope KeyDispatch::scope() const {
    const KeyScope scope = screen_ == nullptr ? KeyScope::none : screen_->keys;
    if (scope == KeyScope::drill && drill_.record() == nullptr) return KeyScope::none;
    // During the review, keys go to its fields and buttons.
    if (scope == KeyScope::runThrough && runThrough_.state() == practice::RunThroughControl::State::review)
        return KeyScope::none;
    return scope;
}

bool KeyDispatch::isUrgent() const {
    return scope() == KeyScope::runThrough
               ? runThrough_.state() == practice::RunThroughControl::State::playing
               : drill_.state() == practice::DrillControl::State::playing;
}

bool KeyDispatch::marksAtOnce() const {
    return scope() == KeyScope::runThrough ? runThrough_.marksAtOnce() : drill_.marksAtOnce();
}

void KeyDispatch::act(KeyAction action, qint64 nanos) {
    if (scope() == KeyScope::runThrough) return actInRunThrough(action);
    if (scope() == KeyScope::set) return emit setWanted();
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
    case KeyAction::pedal:
        return; // its timing matters: see actByPedal()
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

void KeyDispatch::actByPedal(const practice::PedalAct& act) {
    if (scope() == KeyScope::runThrough) return runThrough_.pedal(act);
    if (scope() == KeyScope::drill) return drill_.pedal(act);
    if (scope() == KeyScope::set && act.kind == practice::PedalAct::Kind::press) emit setWanted();
}

} // namespace piolo::models
