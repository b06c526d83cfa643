// SPDX-License-Identifier: GPL-3.0-or-later
// What keys and the one pedal do, by where the player is.
#pragma once

// Qt stands first: moc cannot read the standard headers before it.
#include <QObject>

#include "models/drill/listening.h"
#include "models/drill/run_through_model.h"
#include "models/keys/key_action.h"
#include "models/log/log_figures.h"
#include "models/room/screen.h"
#include "practice/drill/drill_control.h"
#include "practice/keys/pedal_press.h"

#include <cstdint>

namespace piolo::models {

/// Window's thread.
class KeyDispatch : public QObject {
    Q_OBJECT
public:
    /// All of them outlive this.
    KeyDispatch(practice::DrillControl& drill, Listening& listening, RunThroughModel& runThrough,
                LogFigures& figures, QObject* parent = nullptr);

    void setScreen(const Screen* screen) { screen_ = screen; }
    /// Whose keys are heard now.
    [[nodiscard]] KeyScope scope() const;
    /// Something is played: its keys come before those of any focused control.
    [[nodiscard]] bool isUrgent() const;
    /// A press of the one pedal marks now, and does not wait for a second one.
    [[nodiscard]] bool marksAtOnce() const;

    /// `nanos`: when the key was pressed, on the monotonic clock.
    void act(piolo::models::KeyAction action, qint64 nanos);
    void actByPedal(const piolo::practice::PedalAct& act);

signals:
    void nextWanted();
    /// Save what the passage's form holds, and drill it.
    void formToBeDrilled();

private:
    void actInRunThrough(KeyAction action);
    void makeStretch();

    practice::DrillControl& drill_;
    Listening& listening_;
    RunThroughModel& runThrough_;
    LogFigures& figures_;
    const Screen* screen_ = nullptr;
};

} // namespace piolo::models
