// SPDX-License-Identifier: GPL-3.0-or-later
#include "device/plugin/midi_functions.h"

#include <rtmidi/RtMidi.h>

#include <utility>

namespace piolo::device {

namespace {

constexpr const char* clientName = "Piolo";

/// RtMidi would write to standard error; the screen reports inputs that cannot be opened.
void beQuiet(RtMidiError::Type /*type*/, const std::string& /*words*/, void* /*user*/) {}

class RtInput final : public MidiInput {
public:
    explicit RtInput(MidiBackend::Heard heard)
        : heard_(std::move(heard)), in_(RtMidi::LINUX_ALSA, clientName) {
        in_.setErrorCallback(beQuiet, nullptr);
        in_.setCallback(receive, this);
    }
    bool open(const std::string& name) {
        const unsigned count = in_.getPortCount();
        for (unsigned port = 0; port < count; ++port) {
            if (in_.getPortName(port) != name) continue;
            in_.openPort(port, clientName);
            return in_.isPortOpen();
        }
        return false;
    }

private:
    static void receive(double /*since*/, std::vector<unsigned char>* message, void* self) {
        static_cast<RtInput*>(self)->heard_(*message);
    }

    MidiBackend::Heard heard_;
    RtMidiIn in_; // last: its thread ends before the members it uses are destroyed
};

class RtDoor final : public MidiBackend {
public:
    bool isThere() override { return true; }

    std::vector<std::string> inputs() override {
        std::vector<std::string> names;
        try {
            if (!scout_) {
                scout_ = std::make_unique<RtMidiIn>(RtMidi::LINUX_ALSA, clientName);
                scout_->setErrorCallback(beQuiet, nullptr);
            }
            const unsigned count = scout_->getPortCount();
            for (unsigned port = 0; port < count; ++port) names.push_back(scout_->getPortName(port));
        } catch (const RtMidiError&) {
            names.clear();
        }
        return names;
    }

    std::unique_ptr<MidiInput> open(const std::string& name, Heard heard) override {
        try {
            auto input = std::make_unique<RtInput>(std::move(heard));
            if (input->open(name)) return input;
        } catch (const RtMidiError&) {
            return nullptr; // as if it were not there
        }
        return nullptr;
    }

private:
    std::unique_ptr<RtMidiIn> scout_;
};

std::unique_ptr<MidiBackend> made() { return std::make_unique<RtDoor>(); }

} // namespace

} // namespace piolo::device

extern "C" const piolo::device::MidiFunctions pioloMidi{piolo::device::made};
