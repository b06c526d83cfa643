// SPDX-License-Identifier: GPL-3.0-or-later
// The system's MIDI inputs, as far as needed to receive switches. Tests replace them with a fake.
#pragma once

#include <cstdint>
#include <functional>
#include <memory>
#include <span>
#include <string>
#include <vector>

namespace piolo::device {

/// An open input. Destroying it closes it; nothing is received from it after that.
class MidiInput {
public:
    virtual ~MidiInput() = default;
};

/// Window thread.
class MidiBackend {
public:
    /// Called on the input's own thread with one complete message.
    using Heard = std::function<void(std::span<const std::uint8_t>)>;

    virtual ~MidiBackend() = default;
    /// True if the system supports MIDI.
    [[nodiscard]] virtual bool isThere() = 0;
    /// The inputs that are plugged in now, with unique names.
    [[nodiscard]] virtual std::vector<std::string> inputs() = 0;
    /// Null if that input cannot be opened.
    [[nodiscard]] virtual std::unique_ptr<MidiInput> open(const std::string& name, Heard heard) = 0;
};

/// The system's implementation: the ALSA sequencer, through RtMidi.
[[nodiscard]] std::unique_ptr<MidiBackend> systemMidi();

} // namespace piolo::device
