// SPDX-License-Identifier: GPL-3.0-or-later
// Standard MIDI File, format 1: a tempo track, a click track and, if there are notes, a note track.
#pragma once

#include "core/base/result.h"
#include "core/time/fraction.h"
#include "core/time/tempo.h"

#include <cstdint>
#include <string>
#include <vector>

namespace piolo::files {

/// Ticks per quarter (840 · 4): every subdivision 1…8 of every beat unit is a whole number of ticks.
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
    std::uint64_t end = 1; ///< later than `tick`
    std::uint8_t key = 69;
    std::uint8_t velocity = 80;
};

struct MidiTrack {
    int numerator = 4;
    int denominator = 4;
    Fraction beat{1, 4};                     ///< the unit of the tempi and of the MIDI metronome clock
    std::vector<MidiTempo> tempi;            ///< ascending
    std::vector<MidiClick> clicks;           ///< ascending; on channel 10
    std::uint64_t length = 0;                ///< in ticks
    std::int32_t division = ticksPerQuarter; ///< ticks per quarter, 16…32767
    std::vector<MidiNote> notes{};           ///< ascending; on channel 1, played as a clarinet
};

/// The file's bytes. Tempi are rounded to whole microseconds per quarter.
[[nodiscard]] std::vector<std::uint8_t> midiBytes(const MidiTrack& track);
/// Faults: cannotWrite, diskFull.
Done writeMidi(const std::string& path, const MidiTrack& track);

} // namespace piolo::files
