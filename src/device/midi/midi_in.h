// SPDX-License-Identifier: GPL-3.0-or-later
// MIDI in: opens every input that is plugged in and queues its switch moves in the order of arrival.
#pragma once

#include "device/midi/midi_backend.h"
#include "practice/ports/midi_port.h"

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

/// Window thread, except that the inputs' own threads add moves. Never touches the sound threads. Messages
/// that no switch sends are ignored.
class MidiIn final : public practice::MidiPort {
public:
    /// The most moves that wait in the queue. When it is full, new moves are dropped.
    static constexpr std::size_t mostWaiting = 1024;

    MidiIn(std::unique_ptr<MidiBackend> door, std::function<std::int64_t()> clock);
    ~MidiIn() override;
    MidiIn(const MidiIn&) = delete;
    MidiIn& operator=(const MidiIn&) = delete;

    bool look() override;
    void close() override;
    [[nodiscard]] std::vector<std::string> inputs() const override;
    /// `heard` is called on an input's thread when a move arrives in an empty queue.
    void onMessage(std::function<void()> heard) override { heard_ = std::move(heard); }
    bool take(practice::MidiMoment& moment) override;

private:
    void keep(std::span<const std::uint8_t> bytes);

    std::unique_ptr<MidiBackend> door_;
    std::function<std::int64_t()> clock_;
    std::function<void()> heard_ = [] {};
    std::mutex mutex_; // guards only waiting_
    std::deque<practice::MidiMoment> waiting_;
    std::map<std::string, std::unique_ptr<MidiInput>> open_; // last: its threads use the other members
};

} // namespace piolo::device
