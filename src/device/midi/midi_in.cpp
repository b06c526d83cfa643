// SPDX-License-Identifier: GPL-3.0-or-later
#include "device/midi/midi_in.h"

#include <algorithm>
#include <utility>

namespace piolo::device {

MidiIn::MidiIn(std::unique_ptr<MidiBackend> door, std::function<std::int64_t()> clock)
    : door_(std::move(door)), clock_(std::move(clock)) {}

MidiIn::~MidiIn() { close(); }

bool MidiIn::look() {
    if (!door_->isThere()) {
        close();
        return false;
    }
    const auto there = door_->inputs();
    std::erase_if(open_, [&](const auto& input) {
        return std::find(there.begin(), there.end(), input.first) == there.end();
    });
    for (const auto& name : there) {
        if (open_.contains(name)) continue;
        auto input = door_->open(name, [this](std::span<const std::uint8_t> bytes) { keep(bytes); });
        if (input) open_.emplace(name, std::move(input));
    }
    return true;
}

void MidiIn::close() {
    open_.clear();
    const std::lock_guard lock(mutex_);
    waiting_.clear();
}

std::vector<std::string> MidiIn::inputs() const {
    std::vector<std::string> names;
    names.reserve(open_.size());
    for (const auto& input : open_) names.push_back(input.first);
    return names;
}

void MidiIn::keep(std::span<const std::uint8_t> bytes) {
    const auto press = midiPress(bytes);
    if (!press) return;
    const practice::MidiMoment moment{*press, clock_()};
    bool first = false;
    {
        const std::lock_guard lock(mutex_);
        if (waiting_.size() >= mostWaiting) return;
        first = waiting_.empty();
        waiting_.push_back(moment);
    }
    if (first) heard_();
}

bool MidiIn::take(practice::MidiMoment& moment) {
    const std::lock_guard lock(mutex_);
    if (waiting_.empty()) return false;
    moment = waiting_.front();
    waiting_.pop_front();
    return true;
}

} // namespace piolo::device
