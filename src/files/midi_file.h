// SPDX-License-Identifier: GPL-3.0-or-later
// Standard MIDI File, format 1: tempo track, one click track, and one of notes where there are any.
#pragma once

#include "core/base/result.h"
#include "core/time/fraction.h"
#include "core/time/tempo.h"

#include <cstdint>
#include <string>
#include <vector>

namespace piolo::files {

/// Ticks to the quarter: every subdivision 1…8 of every beat unit is a whole number of them (840 · 4).
inline constexpr std::int32_t ticksPerQuarter = 3360;

struct MidiTempo {
    std::uint64_t tick = 0;
    Tempo tempo = Tempo::bpm(120);
};
struct MidiClick {
    std::uint64_t tick = 0;
    std::uint8_t key = 76;
    std::uint8_t velocity = 100;
};

struct MidiNote {
    std::uint64_t tick = 0;
    std::uint64_t end = 1; ///< after `tick`
    std::uint8_t key = 69;
    std::uint8_t velocity = 80;
};

struct MidiTrack {
    int numerator = 4;
    int denominator = 4;
    Fraction beat{1, 4};                     ///< the note that tempi count and the metronome clock ticks
    std::vector<MidiTempo> tempi;            ///< in order
    std::vector<MidiClick> clicks;           ///< in order, channel 10
    std::uint64_t length = 0;                ///< ticks
    std::int32_t division = ticksPerQuarter; ///< ticks to the quarter, 16…32767
    std::vector<MidiNote> notes{};           ///< in order, channel 1, as a clarinet
};

/// The file's bytes. Tempi are rounded to whole microseconds a quarter.
[[nodiscard]] std::vector<std::uint8_t> midiBytes(const MidiTrack& track);
/// Faults: cannotWrite, diskFull.
Done writeMidi(const std::string& path, const MidiTrack& track);

} // namespace piolo::files
