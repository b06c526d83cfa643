// SPDX-License-Identifier: GPL-3.0-or-later
#include "midi_bytes.h"

#include "command.h"

#include <algorithm>
#include <doctest/doctest.h>

namespace piolo::test {
namespace {

struct Bytes {
    std::string all;
    std::size_t at = 0;

    int next() { return static_cast<unsigned char>(all.at(at++)); }
    std::uint32_t big(int width) {
        std::uint32_t value = 0;
        for (int i = 0; i < width; ++i) value = value << 8U | static_cast<unsigned>(next());
        return value;
    }
    std::uint64_t variable() {
        std::uint64_t value = 0;
        int byte = 0x80;
        while ((byte & 0x80) != 0) {
            byte = next();
            value = value << 7U | static_cast<unsigned>(byte & 0x7F);
        }
        return value;
    }
    std::string text(std::size_t count) {
        at += count;
        return all.substr(at - count, count);
    }
};

void readMeta(Bytes& bytes, std::uint64_t tick, MidiSong& song) {
    const int kind = bytes.next();
    const std::string data = bytes.text(bytes.variable());
    if (kind == 0x58 && song.meter.empty()) song.meter = data;
    if (kind != 0x51) return;
    REQUIRE(data.size() == 3);
    Bytes micros{data};
    song.tempi.push_back({tick, micros.big(3)});
}

void readTrack(Bytes& bytes, MidiSong& song) {
    REQUIRE(bytes.text(4) == "MTrk");
    const std::size_t length = bytes.big(4);
    const std::size_t end = bytes.at + length;
    std::uint64_t tick = 0;
    int status = 0;
    while (bytes.at < end) {
        tick += bytes.variable();
        if ((static_cast<unsigned char>(bytes.all.at(bytes.at)) & 0x80) != 0) status = bytes.next();
        if (status == 0xFF) {
            readMeta(bytes, tick, song);
            continue;
        }
        const int kind = status & 0xF0;
        const int first = bytes.next();
        const int second = kind == 0xC0 || kind == 0xD0 ? 0 : bytes.next();
        if (kind == 0x90 && second > 0) song.notes.push_back({tick, status & 0x0F, first, second});
    }
    CHECK(bytes.at == end);
    song.length = std::max(song.length, tick);
}

} // namespace

double MidiSong::seconds(std::uint64_t tick) const {
    double seconds = 0;
    for (std::size_t i = 0; i < tempi.size() && tempi[i].tick < tick; ++i) {
        const std::uint64_t end = i + 1 < tempi.size() ? std::min(tick, tempi[i + 1].tick) : tick;
        seconds += static_cast<double>(end - tempi[i].tick) * tempi[i].microsPerQuarter / division / 1e6;
    }
    return seconds;
}

MidiSong readSong(const std::string& path) {
    Bytes bytes{bytesOf(path)};
    MidiSong song;
    REQUIRE(bytes.text(4) == "MThd");
    REQUIRE(bytes.big(4) == 6);
    song.format = static_cast<int>(bytes.big(2));
    const std::uint32_t tracks = bytes.big(2);
    song.division = static_cast<int>(bytes.big(2));
    for (std::uint32_t i = 0; i < tracks; ++i) readTrack(bytes, song);
    CHECK(bytes.at == bytes.all.size());
    return song;
}

} // namespace piolo::test
