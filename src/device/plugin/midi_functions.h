// SPDX-License-Identifier: GPL-3.0-or-later
// What the program asks of RtMidi, which is loaded when the system's MIDI inputs are first listed.
#pragma once

#include "device/midi/midi_backend.h"

#include <memory>

namespace piolo::device {

struct MidiFunctions {
    static constexpr const char* plugin = "midi";
    static constexpr const char* object = "pioloMidi";

    std::unique_ptr<MidiBackend> (*backend)();
};

} // namespace piolo::device
