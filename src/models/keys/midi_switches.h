// SPDX-License-Identifier: GPL-3.0-or-later
// MIDI switches while they are needed: looks for inputs every two seconds and reports switches as they move.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QObject>
#include <QStringList>
#include <QTimer>

#include "practice/ports/midi_port.h"

namespace piolo::models {

/// Window thread. While nobody needs MIDI, no input is open and nothing is looked for.
class MidiSwitches : public QObject {
    Q_OBJECT
public:
    /// `port` must outlive this object.
    explicit MidiSwitches(practice::MidiPort& port, QObject* parent = nullptr);
    ~MidiSwitches() override;

    void want(bool wanted);
    /// True if the system had MIDI at the last look.
    [[nodiscard]] bool isThere() const { return there_; }
    [[nodiscard]] QStringList inputs() const { return inputs_; }
    /// Called by the timer.
    void look();

signals:
    void moved(const piolo::practice::MidiMoment& moment);
    /// isThere() or inputs() changed.
    void changed();

private:
    void takeAll();

    practice::MidiPort& port_;
    QTimer timer_;
    bool there_ = true;
    QStringList inputs_;
};

} // namespace piolo::models
