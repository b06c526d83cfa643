// SPDX-License-Identifier: GPL-3.0-or-later
#include "files/midi_file.h"

#include "core/time/meter.h"
#include "core/time/subdivision.h"
#include "scratch_folder.h"

#include <algorithm>
#include <cmath>
#include <doctest/doctest.h>

using namespace piolo;
using namespace piolo::files;
using piolo::test::contentOf;
using piolo::test::ScratchFolder;

namespace {

using Bytes = std::vector<std::uint8_t>;

bool contains(const Bytes& bytes, const Bytes& part) {
    return std::search(bytes.begin(), bytes.end(), part.begin(), part.end()) != bytes.end();
}

Bytes withTempo(Tempo tempo, Fraction beat) {
    MidiTrack track;
    track.beat = beat;
    track.tempi = {{0, tempo}};
    track.length = 1;
    return midiBytes(track);
}

/// The tempo event for `micros` as its six bytes.
Bytes tempoEvent(std::uint32_t micros) {
    return {0xFF,
            0x51,
            0x03,
            static_cast<std::uint8_t>(micros >> 16),
            static_cast<std::uint8_t>(micros >> 8),
            static_cast<std::uint8_t>(micros)};
}

/// The ticks of all note-ons in the second track, read back by the rules of the format.
std::vector<std::uint64_t> noteOnTicks(const Bytes& file) {
    const Bytes name{'M', 'T', 'r', 'k'};
    auto at = std::search(file.begin(), file.end(), name.begin(), name.end());
    at = std::search(at + 4, file.end(), name.begin(), name.end()) + 8;
    std::vector<std::uint64_t> ticks;
    std::uint64_t now = 0;
    while (at != file.end()) {
        std::uint64_t delta = 0;
        do delta = (delta << 7) | (*at & 0x7FU);
        while (*at++ & 0x80U);
        now += delta;
        if (*at == 0xFF) break;
        if (*at == 0x99) ticks.push_back(now);
        at += 3;
    }
    return ticks;
}

} // namespace

TEST_CASE("a whole file, byte by byte") {
    // Source: Standard MIDI Files 1.0: MThd 00000006, format 1, two tracks, ticks per quarter; FF 58 04, FF
    // 51 03, FF 2F 00; variable-length quantities; status 9n with n = 9 for channel 10.
    MidiTrack track;
    track.tempi = {{0, Tempo::bpm(120)}};
    track.clicks = {{0, 76, 127}, {3360, 77, 100}};
    track.length = 6720;
    const Bytes expected{'M',  'T',  'h',  'd',  0,    0,    0,    6,    0,  1, 0, 2, 0x0D, 0x20, // 3360
                         'M',  'T',  'r',  'k',  0,    0,    0,    20,                            //
                         0,    0xFF, 0x58, 4,    4,    2,    24,   8,                             // 4/4
                         0,    0xFF, 0x51, 3,    0x07, 0xA1, 0x20,                                // 500000
                         0xB4, 0x40, 0xFF, 0x2F, 0,                             // 6720 = 52·128 + 64
                         'M',  'T',  'r',  'k',  0,    0,    0,    24,          //
                         0,    0x99, 76,   127,  0x81, 0x52, 0x89, 76,   0,     // 210 = 1·128 + 82
                         0x98, 0x4E, 0x99, 77,   100,  0x81, 0x52, 0x89, 77, 0, // 3150 = 24·128 + 78
                         0x98, 0x4E, 0xFF, 0x2F, 0};
    CHECK(midiBytes(track) == expected);
}

TEST_CASE("tempi are microseconds per quarter") {
    // Source: 60000000 / BPM, computed; 07A120 for 120 BPM as published for the format (FF 51 03 07 A1 20,
    // the default).
    struct Row {
        int bpm;
        std::uint32_t micros;
    };
    for (const auto& [bpm, micros] :
         {Row{40, 0x16E360}, Row{60, 0x0F4240}, Row{96, 0x098968}, Row{100, 0x0927C0}, Row{120, 0x07A120},
          Row{132, 0x06EF91}, Row{144, 0x065B9B}, Row{208, 0x0466CE}}) {
        CAPTURE(bpm);
        CHECK(contains(withTempo(Tempo::bpm(bpm), {1, 4}), tempoEvent(micros)));
    }
}

TEST_CASE("the beat unit is converted to quarters: dotted quarter = 80 is quarter = 120") {
    CHECK(contains(withTempo(Tempo::bpm(80), {3, 8}), tempoEvent(500'000)));
    CHECK(contains(withTempo(Tempo::bpm(60), {1, 2}), tempoEvent(500'000)));
    CHECK(contains(withTempo(Tempo::bpm(240), {1, 8}), tempoEvent(500'000)));
    CHECK(contains(withTempo(Tempo::bpm(40), {3, 4}), tempoEvent(500'000)));
}

TEST_CASE("the slowest and the fastest tempo fit the format's three bytes") {
    CHECK(contains(withTempo(Tempo::bpm(10), {1, 8}), tempoEvent(12'000'000)));
    CHECK(contains(withTempo(Tempo::bpm(400), {3, 4}), tempoEvent(50'000)));
}

TEST_CASE("a written tempo reads back within a thousandth of a BPM") {
    for (std::int64_t thousandths = Tempo::least; thousandths <= 208'000; thousandths += 37) {
        const auto micros = (60'000'000'000 + thousandths / 2) / thousandths;
        const auto tempo = *Tempo::fromThousandths(thousandths);
        CAPTURE(thousandths);
        CHECK(contains(withTempo(tempo, {1, 4}), tempoEvent(static_cast<std::uint32_t>(micros))));
        const double back = 6e10 / static_cast<double>(micros);
        CHECK(std::abs(back - static_cast<double>(thousandths)) <= 1.0);
    }
}

TEST_CASE("the time signature carries the metronome's clocks: 6/8 in dotted quarters is 06 03 24 08") {
    // Source: the format's FF 58 with cc in clocks, 24 per quarter; 6/8 clicked in dotted quarters is the
    // standard's own example, cited from memory.
    MidiTrack track;
    track.numerator = 6;
    track.denominator = 8;
    track.beat = {3, 8};
    CHECK(contains(midiBytes(track), {0xFF, 0x58, 0x04, 0x06, 0x03, 0x24, 0x08}));
    track.numerator = 7;
    track.beat = {1, 8};
    CHECK(contains(midiBytes(track), {0xFF, 0x58, 0x04, 0x07, 0x03, 0x0C, 0x08}));
}

TEST_CASE("the division includes every subdivision of every beat unit and fits the format's 15 bits") {
    CHECK(ticksPerQuarter <= 32'767);
    for (const auto unit :
         {BeatUnit::half, BeatUnit::quarter, BeatUnit::dottedQuarter, BeatUnit::eighth, BeatUnit::dottedHalf})
        for (int pulses = 1; pulses <= mostPulsesToTheBeat; ++pulses) {
            const Fraction beat = fractionOf(unit);
            CAPTURE(beat.text());
            CAPTURE(pulses);
            CHECK(ticksPerQuarter * 4 * beat.numerator % (beat.denominator * pulses) == 0);
        }
    CHECK(ticksPerQuarter / 2 / 7 == 240);
    CHECK(ticksPerQuarter * 3 / 2 / 7 == 720);
}

TEST_CASE("clicks keep their ticks, however close they are") {
    MidiTrack track;
    std::vector<std::uint64_t> ticks;
    for (std::uint64_t tick = 0; tick < 40'000; tick += 1 + (tick * 7) % 211) ticks.push_back(tick);
    for (const auto tick : ticks) track.clicks.push_back({tick, 76, 100});
    track.length = 40'000;
    CHECK(noteOnTicks(midiBytes(track)) == ticks);
}

TEST_CASE("a written file contains the bytes, and a fault names the path") {
    const ScratchFolder folder;
    MidiTrack track;
    track.length = 10;
    REQUIRE(writeMidi(folder / "x.mid", track).ok());
    const Bytes bytes = midiBytes(track);
    CHECK(contentOf(folder / "x.mid") == std::string(bytes.begin(), bytes.end()));
    const auto written = writeMidi(folder / "none/x.mid", track);
    REQUIRE_FALSE(written.ok());
    CHECK(written.fault().location.file == folder / "none/x.mid");
}
