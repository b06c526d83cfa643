// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/midi_adapter.h"

#include "device/sound/sound_out.h"

#include <algorithm>
#include <span>
#include <utility>

namespace piolo::app {

MidiAdapter::MidiAdapter(std::unique_ptr<device::MidiBackend> door)
    : in_(std::move(door), device::monotonicNanos) {}

QStringList MidiAdapter::inputs() const {
    QStringList names;
    for (const std::string& name : in_.inputs()) names << QString::fromStdString(name);
    return names;
}

bool MidiAdapter::take(practice::MidiMoment& moment) {
    device::MidiMessage message;
    while (in_.take(message)) {
        if (message.size > message.bytes.size()) continue;
        const auto press = midiPress(std::span(message.bytes).first(message.size));
        if (!press) continue;
        moment = {*press, message.nanos};
        return true;
    }
    return false;
}

} // namespace piolo::app
