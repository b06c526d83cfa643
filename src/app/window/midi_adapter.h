// SPDX-License-Identifier: GPL-3.0-or-later
// Plugs MIDI inputs into what the models ask of them.
#pragma once

#include "device/midi/midi_in.h"
#include "practice/ports/midi_port.h"

namespace piolo::app {

/// A MidiPort over one MidiIn; threads as MidiIn's. What no switch sends is passed over.
class MidiAdapter final : public practice::MidiPort {
public:
    explicit MidiAdapter(std::unique_ptr<device::MidiBackend> door);

    bool look() override { return in_.look(); }
    void close() override { in_.close(); }
    [[nodiscard]] QStringList inputs() const override;
    void onMessage(std::function<void()> heard) override { in_.onMessage(std::move(heard)); }
    bool take(practice::MidiMoment& moment) override;

private:
    device::MidiIn in_;
};

} // namespace piolo::app
