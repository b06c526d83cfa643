// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/midi_press.h"

#include <doctest/doctest.h>

#include <set>
#include <vector>

using namespace piolo;
using Kind = MidiSwitch::Kind;
using Way = MidiPress::Way;
using Bytes = std::vector<std::uint8_t>;

// The messages are those that csvmidi 1.1 (Debian's midicsv) wrote for the lines next to them, with its
// running status expanded. That controllers switch at 64 follows the MIDI 1.0 Detailed Specification's "0-63
// off, 64-127 on" for pedals, from memory.
TEST_CASE("messages as another program writes them are read as what their lines say") {
    struct Line {
        Bytes bytes;
        MidiPress says;
    };
    const std::vector<Line> lines{
        {{0x90, 0x3c, 0x64}, {{Kind::note, 60, 1}, Way::down}},        // Note_on_c, 0, 60, 100
        {{0x90, 0x3c, 0x00}, {{Kind::note, 60, 1}, Way::up}},          // Note_on_c, 0, 60, 0
        {{0x99, 0x24, 0x01}, {{Kind::note, 36, 10}, Way::down}},       // Note_on_c, 9, 36, 1
        {{0x89, 0x24, 0x40}, {{Kind::note, 36, 10}, Way::up}},         // Note_off_c, 9, 36, 64
        {{0xb0, 0x40, 0x7f}, {{Kind::controller, 64, 1}, Way::down}},  // Control_c, 0, 64, 127
        {{0xb0, 0x40, 0x3f}, {{Kind::controller, 64, 1}, Way::up}},    // Control_c, 0, 64, 63
        {{0xbf, 0x50, 0x40}, {{Kind::controller, 80, 16}, Way::down}}, // Control_c, 15, 80, 64
        {{0xcf, 0x05}, {{Kind::program, 5, 16}, Way::tap}},            // Program_c, 15, 5
    };
    for (const auto& line : lines) {
        INFO(line.says.which.text());
        const auto read = midiPress(line.bytes);
        REQUIRE(read);
        CHECK(*read == line.says);
    }
}

TEST_CASE("what no switch sends, and what is not a message, is ignored") {
    const std::vector<Bytes> others{
        {},
        {0x90},
        {0x90, 0x3c},
        {0x90, 0x3c, 0x80},
        {0x90, 0x3c, 0x40, 0x40},
        {0x3c, 0x40, 0x40},
        {0xe0, 0x00, 0x40}, // Pitch_bend_c, 0, 8192
        {0xd0, 0x5a},       // Channel_aftertouch_c, 0, 90
        {0xc0, 0x05, 0x05},
        {0xf8},
        {0xf0, 0x7e, 0xf7},
    };
    for (const auto& bytes : others) CHECK_FALSE(midiPress(bytes));
}

TEST_CASE("every switch has a unique text that is read back as it, and a unique number") {
    std::set<std::string> texts;
    std::set<int> codes;
    for (const auto kind : {Kind::note, Kind::controller, Kind::program})
        for (int number = 0; number < 128; ++number)
            for (int channel = 1; channel <= 16; ++channel) {
                const MidiSwitch one{kind, number, channel};
                REQUIRE(MidiSwitch::named(one.text()) == one);
                texts.insert(one.text());
                codes.insert(one.code());
            }
    CHECK(texts.size() == 3 * 128 * 16);
    CHECK(codes.size() == texts.size());
    CHECK(*codes.begin() == 0);
    CHECK(MidiSwitch{Kind::controller, 64, 1}.text() == "midi cc 64 ch 1");
}

TEST_CASE("any other text is not a switch") {
    for (const char* text :
         {"", "midi", "midi ", "midi cc", "midi cc 64", "midi cc 64 ch", "midi cc 64 ch 0",
          "midi cc 64 ch 17", "midi cc 128 ch 1", "midi cc -1 ch 1", "midi cc 064 ch 1", "midi cc 64 ch 1 ",
          "midi bend 1 ch 1", "MIDI cc 64 ch 1", "midi cc 64  ch 1", "Space"}) {
        INFO(text);
        CHECK_FALSE(MidiSwitch::named(text));
    }
}
