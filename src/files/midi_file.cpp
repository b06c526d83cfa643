// SPDX-License-Identifier: GPL-3.0-or-later
#include "files/midi_file.h"

#include "files/atomic_file.h"
#include "files/byte_order.h"

#include <algorithm>
#include <bit>
#include <span>
#include <string_view>

namespace piolo::files {

namespace {

constexpr std::uint32_t clocksPerWhole = 96;
constexpr std::uint32_t clicksToTheQuarter = 16; // the longest click, as a fraction of a quarter: 1/16
constexpr std::uint8_t noteOn = 0x99;            // channel 10
constexpr std::uint8_t noteOff = 0x89;
constexpr std::uint8_t channel1 = 0;
// General MIDI's program 72, counted from 1 (from memory).
constexpr std::uint8_t clarinet = 71;

void putText(Bytes& out, std::string_view text) { out.insert(out.end(), text.begin(), text.end()); }

void putVariable(Bytes& out, std::uint32_t value) {
    for (int shift = 21; shift > 0; shift -= 7)
        if (value >> shift) out.push_back(static_cast<std::uint8_t>(0x80 | ((value >> shift) & 0x7F)));
    out.push_back(static_cast<std::uint8_t>(value & 0x7F));
}

/// The events of one track in ascending order of ticks.
class TrackBytes {
public:
    void at(std::uint64_t tick, std::initializer_list<std::uint8_t> event) {
        const std::uint64_t from = std::min(now_, tick);
        putVariable(bytes_, static_cast<std::uint32_t>(std::min<std::uint64_t>(tick - from, 0x0FFF'FFFF)));
        bytes_.insert(bytes_.end(), event);
        now_ = std::max(now_, tick);
    }
    void end(std::uint64_t length, Bytes& out) {
        at(std::max(length, now_), {0xFF, 0x2F, 0x00});
        putText(out, "MTrk");
        putBig(out, static_cast<std::uint32_t>(bytes_.size()), 4);
        out.insert(out.end(), bytes_.begin(), bytes_.end());
    }

private:
    Bytes bytes_;
    std::uint64_t now_ = 0;
};

std::uint32_t microsPerQuarter(Tempo tempo, Fraction beat) {
    const auto quarters = std::int64_t{tempo.thousandths()} * beat.numerator * 4;
    const std::int64_t exact = std::int64_t{60'000'000'000} * beat.denominator;
    return static_cast<std::uint32_t>(
        std::min<std::int64_t>((2 * exact + quarters) / (2 * quarters), 0xFF'FFFF));
}

void putTempi(Bytes& out, const MidiTrack& track) {
    TrackBytes events;
    const auto clocks = clocksPerWhole * static_cast<std::uint32_t>(track.beat.numerator) /
                        static_cast<std::uint32_t>(track.beat.denominator);
    events.at(0, {0xFF, 0x58, 4, static_cast<std::uint8_t>(track.numerator),
                  static_cast<std::uint8_t>(std::countr_zero(static_cast<unsigned>(track.denominator))),
                  static_cast<std::uint8_t>(clocks), 8});
    for (const auto& [tick, tempo] : track.tempi) {
        const auto micros = microsPerQuarter(tempo, track.beat);
        events.at(tick, {0xFF, 0x51, 3, static_cast<std::uint8_t>(micros >> 16),
                         static_cast<std::uint8_t>(micros >> 8), static_cast<std::uint8_t>(micros)});
    }
    events.end(track.length, out);
}

void putClicks(Bytes& out, const MidiTrack& track) {
    TrackBytes events;
    const auto longestClick = static_cast<std::uint64_t>(track.division) / clicksToTheQuarter;
    for (std::size_t i = 0; i < track.clicks.size(); ++i) {
        const auto& click = track.clicks[i];
        const auto next = i + 1 < track.clicks.size() ? track.clicks[i + 1].tick : track.length;
        const auto off = std::max(click.tick, std::min(click.tick + longestClick, next));
        events.at(click.tick, {noteOn, click.key, click.velocity});
        events.at(off, {noteOff, click.key, 0});
    }
    events.end(track.length, out);
}

struct Touch {
    std::uint64_t tick;
    bool on;
    std::uint8_t key;
    std::uint8_t velocity;
};

/// At the same tick, notes end before others begin.
void putNotes(Bytes& out, const MidiTrack& track) {
    std::vector<Touch> touches;
    for (const auto& note : track.notes) {
        touches.push_back({note.tick, true, note.key, note.velocity});
        touches.push_back({note.end, false, note.key, 0});
    }
    std::ranges::stable_sort(touches, [](const Touch& a, const Touch& b) {
        return a.tick != b.tick ? a.tick < b.tick : !a.on && b.on;
    });
    TrackBytes events;
    events.at(0, {0xC0 | channel1, clarinet});
    for (const auto& [tick, on, key, velocity] : touches)
        events.at(tick, {static_cast<std::uint8_t>((on ? 0x90 : 0x80) | channel1), key, velocity});
    events.end(track.length, out);
}

} // namespace

std::vector<std::uint8_t> midiBytes(const MidiTrack& track) {
    Bytes out;
    putText(out, "MThd");
    putBig(out, 6, 4);
    putBig(out, 1, 2);
    putBig(out, track.notes.empty() ? 2 : 3, 2);
    putBig(out, static_cast<std::uint32_t>(track.division), 2);
    putTempi(out, track);
    putClicks(out, track);
    if (!track.notes.empty()) putNotes(out, track);
    return out;
}

Done writeMidi(const std::string& path, const MidiTrack& track) {
    const Bytes bytes = midiBytes(track);
    return replaceFile(path, std::as_bytes(std::span(bytes)));
}

} // namespace piolo::files
