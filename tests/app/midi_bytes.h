// SPDX-License-Identifier: GPL-3.0-or-later
// A small reader of Standard MIDI Files, independent of the code that wrote them. Layout of chunks and meta
// events as in the MIDI Association's file format 1.0 (FF 51 tempo in microseconds per quarter, FF 58 meter).
#pragma once

#include <cstdint>
#include <string>
#include <vector>

namespace piolo::test {

struct MidiNote {
    std::uint64_t tick = 0;
    int channel = 0; ///< counted from 0
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
    std::vector<MidiNote> notes; ///< attacked, in all tracks
    std::uint64_t length = 0;    ///< tick of the latest end of track
    /// The time of a tick in seconds.
    [[nodiscard]] double seconds(std::uint64_t tick) const;
};

MidiSong readSong(const std::string& path);

} // namespace piolo::test
