// SPDX-License-Identifier: GPL-3.0-or-later
// What keys and the single pedal do, depending on where the player is.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QObject>

#include "models/drill/listening.h"
#include "models/keys/key_action.h"
#include "models/log/log_figures.h"
#include "models/room/screen.h"
#include "practice/click/click_control.h"
#include "practice/drill/drill_control.h"
#include "practice/keys/pedal_press.h"
#include "practice/run_through/run_through_control.h"

#include <cstdint>

namespace piolo::models {

/// Window thread.
class KeyDispatch : public QObject {
    Q_OBJECT
public:
    /// All of them must outlive this object.
    KeyDispatch(practice::DrillControl& drill, Listening& listening, practice::RunThroughControl& runThrough,
                practice::ClickControl& click, LogFigures& figures, QObject* parent = nullptr);

    void setScreen(const Screen* screen) { screen_ = screen; }
    /// Whose keys are handled now.
    [[nodiscard]] KeyScope scope() const;
    /// While something is played, its keys take precedence over any focused control.
    [[nodiscard]] bool isUrgent() const;
    /// True if a press of the single pedal marks now and does not wait for a second one.
    [[nodiscard]] bool marksAtOnce() const;

    /// `nanos`: when the key was pressed, on the monotonic clock.
    void act(piolo::models::KeyAction action, qint64 nanos);
    void actByPedal(const piolo::practice::PedalAct& act);

signals:
    void nextWanted();
    /// Start the set that is chosen.
    void setWanted();
    /// Show just a click.
    void clickWanted();
    /// Save the content of the passage's form, and drill it.
    void formToBeDrilled();
    /// Nothing is playing that the key could stop.
    void nothingToStop();

private:
    void actInRunThrough(KeyAction action);
    void actInClick(KeyAction action, qint64 nanos);
    void makeStretch();

    practice::DrillControl& drill_;
    Listening& listening_;
    practice::RunThroughControl& runThrough_;
    practice::ClickControl& click_;
    LogFigures& figures_;
    const Screen* screen_ = nullptr;
};

} // namespace piolo::models
