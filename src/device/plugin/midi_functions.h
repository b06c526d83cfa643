// SPDX-License-Identifier: GPL-3.0-or-later
// The functions of RtMidi that the program uses; it is loaded when the system's MIDI inputs are first listed.
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
