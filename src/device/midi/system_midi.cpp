// SPDX-License-Identifier: GPL-3.0-or-later
#include "device/midi/midi_backend.h"
#include "device/plugin/midi_functions.h"
#include "files/plugin.h"
#include "practice/faults/fault_sentences.h"

#include <QDebug>

#include <unistd.h>

#include <utility>

namespace piolo::device {

namespace {

/// RtMidi, loaded only once there is something to listen to.
class SystemMidi final : public MidiBackend {
public:
    bool isThere() override { return hasSequencer() && backend() != nullptr; }
    std::vector<std::string> inputs() override {
        return isThere() ? backend()->inputs() : std::vector<std::string>();
    }
    std::unique_ptr<MidiInput> open(const std::string& name, Heard heard) override {
        return isThere() ? backend()->open(name, std::move(heard)) : nullptr;
    }

private:
    // Without a sequencer, RtMidi and ALSA would write complaints to standard error, so they are not asked.
    static bool hasSequencer() { return ::access("/dev/snd/seq", R_OK | W_OK) == 0; }

    MidiBackend* backend() {
        if (!asked_) load();
        return backend_.get();
    }
    void load() {
        asked_ = true;
        const auto functions = files::pluginFunctions<MidiFunctions>();
        if (functions)
            backend_ = (*functions)->backend();
        else
            qWarning("%s: E%d: %s", functions.fault().location.file.c_str(),
                     static_cast<int>(functions.fault().number),
                     practice::sentencePattern(functions.fault().number));
    }

    bool asked_ = false;
    std::unique_ptr<MidiBackend> backend_;
};

} // namespace

std::unique_ptr<MidiBackend> systemMidi() { return std::make_unique<SystemMidi>(); }

} // namespace piolo::device
