// SPDX-License-Identifier: GPL-3.0-or-later
// MIDI in: opens every input that is plugged in and queues its messages in the order of arrival.
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

/// The first three bytes; no switch sends more.
struct MidiMessage {
    std::array<std::uint8_t, 3> bytes{};
    std::size_t size = 0;   ///< of the complete message
    std::int64_t nanos = 0; ///< time of arrival, from monotonicNanos()
};

/// Window thread, except that the inputs' own threads add messages. Never touches the sound threads.
class MidiIn {
public:
    /// The most messages that wait in the queue. When it is full, new messages are dropped.
    static constexpr std::size_t mostWaiting = 1024;

    MidiIn(std::unique_ptr<MidiBackend> door, std::function<std::int64_t()> clock);
    ~MidiIn();
    MidiIn(const MidiIn&) = delete;
    MidiIn& operator=(const MidiIn&) = delete;

    /// Opens inputs that were plugged in and closes those that were unplugged. False if the system has no
    /// MIDI.
    bool look();
    /// Closes all inputs and discards the queued messages.
    void close();
    /// The names of the open inputs.
    [[nodiscard]] std::vector<std::string> inputs() const;
    /// `heard` is called on an input's thread when a message arrives in an empty queue. Set it before the
    /// first look().
    void onMessage(std::function<void()> heard) { heard_ = std::move(heard); }
    /// Takes the oldest message from the queue. False if the queue is empty.
    bool take(MidiMessage& message);

private:
    void keep(std::span<const std::uint8_t> bytes);

    std::unique_ptr<MidiBackend> door_;
    std::function<std::int64_t()> clock_;
    std::function<void()> heard_ = [] {};
    std::mutex mutex_; // guards only waiting_
    std::deque<MidiMessage> waiting_;
    std::map<std::string, std::unique_ptr<MidiInput>> open_; // last: its threads use the other members
};

} // namespace piolo::device
