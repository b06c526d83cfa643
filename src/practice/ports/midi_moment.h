// SPDX-License-Identifier: GPL-3.0-or-later
// A movement of a switch on a MIDI controller.
#pragma once

#include "core/base/midi_press.h"

#include <cstdint>

namespace piolo::practice {

/// Plain values, any thread.
struct MidiMoment {
    MidiPress press;
    std::int64_t nanos = 0; ///< when it moved, on the monotonic clock
    bool operator==(const MidiMoment&) const = default;
};

} // namespace piolo::practice
