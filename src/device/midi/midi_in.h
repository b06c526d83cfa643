// SPDX-License-Identifier: GPL-3.0-or-later
// MIDI in: every input that is plugged in, its messages in the order they came.
#pragma once

#include "device/midi/midi_backend.h"

#include <array>
#include <cstddef>
#include <cstdint>
#include <deque>
#include <functional>
#include <map>
#include <memory>
#include <mutex>
#include <string>
#include <vector>

namespace piolo::device {

/// The first three bytes: no switch sends more.
struct MidiMessage {
    std::array<std::uint8_t, 3> bytes{};
    std::size_t size = 0;   ///< of the whole message
    std::int64_t nanos = 0; ///< when it came, as monotonicNanos()
};

/// Window's thread, but for what the inputs' own threads hand over. Never touches the sound threads.
class MidiIn {
public:
    /// Messages that wait; more are let go, the newest first.
    static constexpr std::size_t mostWaiting = 1024;

    MidiIn(std::unique_ptr<MidiBackend> door, std::function<std::int64_t()> clock);
    ~MidiIn();
    MidiIn(const MidiIn&) = delete;
    MidiIn& operator=(const MidiIn&) = delete;

    /// Opens the inputs that came, lets go of those that went. False where the system has no MIDI.
    bool look();
    /// Lets go of all inputs and of what waits.
    void close();
    /// The inputs that are open.
    [[nodiscard]] std::vector<std::string> inputs() const;
    /// `heard` is called on an input's thread when something waits again. Before the first look().
    void onMessage(std::function<void()> heard) { heard_ = std::move(heard); }
    /// The oldest message that waits. False when there is none.
    bool take(MidiMessage& message);

private:
    void keep(std::span<const std::uint8_t> bytes);

    std::unique_ptr<MidiBackend> door_;
    std::function<std::int64_t()> clock_;
    std::function<void()> heard_ = [] {};
    std::mutex mutex_; // of waiting_ alone
    std::deque<MidiMessage> waiting_;
    std::map<std::string, std::unique_ptr<MidiInput>> open_; // last: its threads use the rest
};

} // namespace piolo::device
