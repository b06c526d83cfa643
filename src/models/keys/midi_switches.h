// SPDX-License-Identifier: GPL-3.0-or-later
// MIDI switches while they are wanted: looked for every two seconds, and told as they move.
#pragma once

// Qt stands first: moc cannot read the standard headers before it.
#include <QObject>
#include <QStringList>
#include <QTimer>

#include "practice/ports/midi_port.h"

namespace piolo::models {

/// Window's thread. While nobody wants MIDI no input is open and nothing is looked for.
class MidiSwitches : public QObject {
    Q_OBJECT
public:
    /// `port` outlives this.
    explicit MidiSwitches(practice::MidiPort& port, QObject* parent = nullptr);
    ~MidiSwitches() override;

    void want(bool wanted);
    /// The system has MIDI, as far as the last look could tell.
    [[nodiscard]] bool isThere() const { return there_; }
    [[nodiscard]] QStringList inputs() const { return inputs_; }
    /// The timer calls it.
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
