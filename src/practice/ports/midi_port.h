// SPDX-License-Identifier: GPL-3.0-or-later
// What the models need of MIDI. The device room is plugged in by app; tests plug in a fake.
#pragma once

#include <QStringList>

#include "core/base/midi_press.h"

#include <cstdint>
#include <functional>

namespace piolo::practice {

/// A switch moved, at that moment of the monotonic clock.
struct MidiMoment {
    MidiPress press;
    std::int64_t nanos = 0;
};

/// Window's thread.
class MidiPort {
public:
    virtual ~MidiPort() = default;
    /// Opens the inputs that came, lets go of those that went. False where the system has no MIDI.
    virtual bool look() = 0;
    virtual void close() = 0;
    /// The inputs that are open, by name.
    [[nodiscard]] virtual QStringList inputs() const = 0;
    /// `heard` is called on a thread of MIDI's own when something can be taken. Before the first look().
    virtual void onMessage(std::function<void()> heard) = 0;
    /// The oldest that waits. False when there is none.
    virtual bool take(MidiMoment& moment) = 0;
};

} // namespace piolo::practice
