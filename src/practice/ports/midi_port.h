// SPDX-License-Identifier: GPL-3.0-or-later
// What practice needs of MIDI. The device room implements it; tests put a fake in its place.
#pragma once

#include "practice/ports/midi_moment.h"

#include <functional>
#include <string>
#include <vector>

namespace piolo::practice {

/// Window thread.
class MidiPort {
public:
    virtual ~MidiPort() = default;
    /// Opens inputs that were plugged in and closes those that were unplugged. False if the system has no
    /// MIDI.
    virtual bool look() = 0;
    /// Closes all inputs and discards the queued moves.
    virtual void close() = 0;
    /// The names of the open inputs.
    [[nodiscard]] virtual std::vector<std::string> inputs() const = 0;
    /// `heard` is called on a MIDI thread when a move can be taken. Set it before the first look().
    virtual void onMessage(std::function<void()> heard) = 0;
    /// Takes the oldest move from the queue. False if the queue is empty.
    virtual bool take(MidiMoment& moment) = 0;
};

} // namespace piolo::practice
