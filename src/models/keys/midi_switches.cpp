// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/keys/midi_switches.h"

#include <QMetaObject>

namespace piolo::models {

namespace {

constexpr int lookEveryMillis = 2'000;

} // namespace

MidiSwitches::MidiSwitches(practice::MidiPort& port, QObject* parent) : QObject(parent), port_(port) {
    port_.onMessage([this] {
        QMetaObject::invokeMethod(
            this, [this] { takeAll(); }, Qt::QueuedConnection);
    });
    timer_.setInterval(lookEveryMillis);
    connect(&timer_, &QTimer::timeout, this, &MidiSwitches::look);
}

MidiSwitches::~MidiSwitches() { port_.close(); }

void MidiSwitches::want(bool wanted) {
    if (wanted == timer_.isActive()) return;
    if (wanted) {
        timer_.start();
        return look();
    }
    timer_.stop();
    port_.close();
    inputs_.clear();
}

void MidiSwitches::look() {
    const bool there = port_.look();
    QStringList inputs;
    for (const std::string& name : port_.inputs()) inputs << QString::fromStdString(name);
    if (there == there_ && inputs == inputs_) return;
    there_ = there;
    inputs_ = inputs;
    emit changed();
}

void MidiSwitches::takeAll() {
    practice::MidiMoment moment;
    while (port_.take(moment)) emit moved(moment);
}

} // namespace piolo::models
