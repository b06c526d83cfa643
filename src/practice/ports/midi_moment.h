// SPDX-License-Identifier: GPL-3.0-or-later
// A switch of a MIDI controller moved.
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
