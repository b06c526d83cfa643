// SPDX-License-Identifier: GPL-3.0-or-later
// The system's MIDI inputs, as far as switches are heard through them. Tests put a fake in their place.
#pragma once

#include <cstdint>
#include <functional>
#include <memory>
#include <span>
#include <string>
#include <vector>

namespace piolo::device {

/// An open input; closed when it goes, and nothing is heard of it after that.
class MidiInput {
public:
    virtual ~MidiInput() = default;
};

/// Window's thread.
class MidiBackend {
public:
    /// Called on a thread of the input's own, a whole message at a time.
    using Heard = std::function<void(std::span<const std::uint8_t>)>;

    virtual ~MidiBackend() = default;
    /// The system can hear MIDI at all.
    [[nodiscard]] virtual bool isThere() = 0;
    /// What is plugged in now. Each name is another.
    [[nodiscard]] virtual std::vector<std::string> inputs() = 0;
    /// Nothing when that input cannot be opened.
    [[nodiscard]] virtual std::unique_ptr<MidiInput> open(const std::string& name, Heard heard) = 0;
};

/// The system's own: the sequencer of ALSA, through RtMidi.
[[nodiscard]] std::unique_ptr<MidiBackend> systemMidi();

} // namespace piolo::device
