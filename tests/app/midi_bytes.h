// SPDX-License-Identifier: GPL-3.0-or-later
// A small reader of Standard MIDI Files, knowing nothing of the code that wrote them. Layout of chunks and
// meta events as the MIDI association's file format 1.0 has it (FF 51 tempo in microseconds a quarter, FF 58
// meter).
#pragma once

#include <cstdint>
#include <string>
#include <vector>

namespace piolo::test {

struct MidiNote {
    std::uint64_t tick = 0;
    int channel = 0; ///< from 0
    int key = 0;
    int velocity = 0;
};
struct MidiTempoEvent {
    std::uint64_t tick = 0;
    std::uint32_t microsPerQuarter = 0;
};

struct MidiSong {
    int format = -1;
    int division = 0;
    std::string meter; ///< the four bytes of the first FF 58
    std::vector<MidiTempoEvent> tempi;
    std::vector<MidiNote> notes; ///< struck, of all tracks
    std::uint64_t length = 0;    ///< tick of the latest end of a track
    /// When a tick sounds, in seconds.
    [[nodiscard]] double seconds(std::uint64_t tick) const;
};

MidiSong readSong(const std::string& path);

} // namespace piolo::test
