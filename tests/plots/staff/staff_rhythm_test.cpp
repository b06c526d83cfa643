// SPDX-License-Identifier: GPL-3.0-or-later
#include "plots/staff/staff_rhythm.h"

#include "plots/staff/staff_pitch.h"
#include "staff_passages.h"

#include "core/music/key_signature.h"
#include "core/time/fraction_sum.h"

#include <doctest/doctest.h>

#include <map>
#include <numeric>

using namespace piolo;
using namespace piolo::plots;

namespace {

const StaffTuplet* tupletOf(const StaffRhythm& rhythm, std::size_t event) {
    for (const StaffTuplet& tuplet : rhythm.tuplets)
        if (event >= tuplet.first && event <= tuplet.last) return &tuplet;
    return nullptr;
}

/// One note after the other from the first moment, with these lengths.
StaffMusic line(std::string_view meter, std::string_view beat, const std::vector<Fraction>& lengths) {
    StaffMusic music;
    music.music.meter = *Meter::parse(meter, beat, "");
    music.music.bars = 0;
    Fraction at;
    for (const Fraction length : lengths) {
        Note note;
        note.onset = at;
        note.length = length;
        music.notes.push_back(note);
        at = *sum(at, length);
    }
    return music;
}

/// The written values, such as "4 8. 8~": 4 for a quarter, a dot for each dot, ~ if tied to the next, r for a
/// rest, "3(" … ")" for a tuplet.
std::string written(const StaffRhythm& rhythm) {
    std::string text;
    for (std::size_t i = 0; i < rhythm.events.size(); ++i) {
        const StaffEvent& event = rhythm.events[i];
        const StaffTuplet* tuplet = tupletOf(rhythm, i);
        if (!text.empty()) text += ' ';
        if (tuplet != nullptr && tuplet->first == i) text += std::to_string(tuplet->number) + '(';
        if (event.isRest()) text += 'r';
        text += std::to_string(1 << event.value.flags) +
                std::string(static_cast<std::size_t>(event.value.dots), '.');
        if (!event.ends && !event.isRest()) text += '~';
        if (tuplet != nullptr && tuplet->last == i) text += ')';
    }
    return text;
}

std::string writtenLine(std::string_view meter, std::string_view beat, const std::vector<Fraction>& lengths) {
    const StaffRhythm rhythm = rhythmOf(line(meter, beat, lengths));
    CHECK(rhythm.inexact.empty());
    return written(rhythm);
}

} // namespace

TEST_CASE("every written value, in its tuplet, is as long as what it stands for") {
    std::mt19937 random(20260414);
    for (int round = 0; round < 300; ++round) {
        const StaffMusic music = randomPassage(random);
        const StaffRhythm rhythm = rhythmOf(music);
        CAPTURE(round);
        REQUIRE(rhythm.inexact.empty());
        for (std::size_t i = 0; i < rhythm.events.size(); ++i) {
            const StaffEvent& event = rhythm.events[i];
            const StaffTuplet* tuplet = tupletOf(rhythm, i);
            if (event.wholeBar) continue;
            StaffTicks length = ticksOf(event.value);
            if (tuplet != nullptr) length = length * tuplet->against / tuplet->number;
            REQUIRE(length == event.length);
        }
    }
}

TEST_CASE("every note is written from its onset to its end, tied where it is written in parts") {
    std::mt19937 random(20260415);
    for (int round = 0; round < 300; ++round) {
        const StaffMusic music = randomPassage(random);
        const StaffRhythm rhythm = rhythmOf(music);
        std::vector<StaffTicks> length(music.notes.size(), 0);
        std::vector<int> begun(music.notes.size(), 0);
        StaffTicks at = 0;
        for (const StaffEvent& event : rhythm.events) {
            REQUIRE(event.onset == at);
            at += event.length;
            for (const std::size_t note : event.notes) {
                if (event.begins) REQUIRE(event.onset == ticksOf(music.notes[note].onset).ticks);
                length[note] += event.length;
                begun[note] += event.begins;
            }
        }
        for (std::size_t note = 0; note < music.notes.size(); ++note) {
            REQUIRE(begun[note] == 1);
            REQUIRE(length[note] == ticksOf(music.notes[note].length).ticks);
        }
    }
}

TEST_CASE("even notes of every subdivision share one beam to the beat, with the beat's tuplet") {
    for (int pulses = 1; pulses <= 8; ++pulses) {
        const StaffRhythm rhythm = rhythmOf(evenScale(Clef::treble, 0, pulses));
        CAPTURE(pulses);
        CHECK(rhythm.beams.size() == (pulses > 1 ? 8 : 0));
        for (const StaffBeam& beam : rhythm.beams) {
            CHECK(beam.last - beam.first + 1 == static_cast<std::size_t>(pulses));
            CHECK(rhythm.events[beam.first].onset % (ticksToWhole / 4) == 0);
        }
        const bool tuplet = pulses == 3 || pulses == 5 || pulses == 6 || pulses == 7;
        CHECK(rhythm.tuplets.size() == (tuplet ? 8 : 0));
        for (const StaffTuplet& one : rhythm.tuplets) {
            CHECK(one.number == pulses);
            CHECK_FALSE(one.bracket);
        }
    }
}

// Common practice.
TEST_CASE("values are written as players know them") {
    CHECK(writtenLine("4/4", "1/4", {{3, 8}, {1, 8}, {1, 2}}) == "4. 8 2");
    CHECK(writtenLine("4/4", "1/4", {{1, 8}, {1, 4}, {1, 8}, {1, 2}}) == "8 4 8 2");
    CHECK(writtenLine("4/4", "1/4", {{5, 16}, {3, 16}, {1, 2}}) == "4~ 16 8. 2");
    CHECK(writtenLine("4/4", "1/4", {{3, 16}, {5, 16}, {1, 2}}) == "8. 16~ 4 2");
    CHECK(writtenLine("4/4", "1/4", {{3, 8}, {1, 4}, {3, 8}}) == "4. 8~ 8 8~ 4");
    CHECK(writtenLine("4/4", "1/4", {{1, 6}, {1, 12}, {3, 4}}) == "3(4 8) 2.");
    CHECK(writtenLine("4/4", "1/4", {{1, 8}, {1, 24}, {1, 24}, {1, 24}, {3, 4}}) == "6(8. 16 16 16) 2.");
    CHECK(writtenLine("6/8", "3/8", {{3, 8}, {1, 4}, {1, 8}}) == "4. 4 8");
    CHECK(writtenLine("6/8", "3/8", {{1, 2}, {1, 4}}) == "4.~ 8 4");
    CHECK(writtenLine("6/8", "3/8", {{3, 16}, {3, 16}, {3, 8}}) == "2(8 8) 4.");
    CHECK(writtenLine("6/8", "3/8", {{3, 16}, {1, 16}, {1, 8}, {3, 8}}) == "8. 16 8 4.");
    CHECK(writtenLine("2/2", "1/2", {{1, 6}, {1, 6}, {1, 6}, {1, 2}}) == "3(4 4 4) 2");
    CHECK(writtenLine("3/4", "1/4", {{1, 1}, {1, 2}}) == "2.~ 4 2");
    CHECK(writtenLine("4/4", "1/4", {{1, 4}}) == "4 r4 r2");
    CHECK(writtenLine("6/8", "3/8", {{3, 8}}) == "4. r4.");
}

TEST_CASE("a length that cannot be written is named, and the note is drawn all the same") {
    const StaffMusic music = line("4/4", "1/4", {{1, 11}, {2, 11}, {8, 11}});
    const StaffRhythm rhythm = rhythmOf(music);
    CHECK(rhythm.inexact == std::vector<std::size_t>{0, 1, 2});
    std::size_t begun = 0;
    for (const StaffEvent& event : rhythm.events)
        if (event.begins) begun += event.notes.size();
    CHECK(begun == 3);
}

TEST_CASE("a note that sounds into the next is cut, and named") {
    StaffMusic music = line("4/4", "1/4", {{1, 4}, {3, 4}});
    music.notes[0].length = {1, 2};
    const StaffRhythm rhythm = rhythmOf(music);
    CHECK(written(rhythm) == "4 2.");
    CHECK(rhythm.inexact == std::vector<std::size_t>{0});
}

TEST_CASE("a pick-up is a short bar before the first, and the landing note is in a bar left open") {
    StaffMusic music = line("4/4", "1/4", {{1, 4}, {1, 1}, {1, 4}});
    music.music.pickup = {1, 4};
    music.music.bars = 1;
    music.music.firstBar = 41;
    const StaffRhythm rhythm = rhythmOf(music);
    REQUIRE(rhythm.bars.size() == 3);
    CHECK(rhythm.bars[0].pickup);
    CHECK(rhythm.bars[1].number == 41);
    CHECK(rhythm.bars[2].number == 42);
    CHECK(written(rhythm) == "4 1 4");
}

TEST_CASE("bars without notes have one rest each, whatever their meter") {
    StaffMusic music;
    music.music.meter = *Meter::parse("7/8", "1/8", "");
    music.music.bars = 3;
    const StaffRhythm rhythm = rhythmOf(music);
    CHECK(rhythm.events.size() == 3);
    for (const StaffEvent& event : rhythm.events) CHECK(event.wholeBar);
}

TEST_CASE(
    "an accidental appears where the pitch differs from what the bar and the signature say, and only there") {
    std::mt19937 random(20260416);
    for (int round = 0; round < 200; ++round) {
        const StaffMusic music = randomPassage(random);
        const StaffRhythm rhythm = rhythmOf(music);
        const auto shown = accidentalsOf(music, rhythm);
        // A second, naive implementation: for every head, it reads all earlier events of the bar again.
        for (std::size_t i = 0; i < rhythm.events.size(); ++i)
            for (std::size_t k = 0; k < rhythm.events[i].notes.size(); ++k) {
                const std::size_t note = rhythm.events[i].notes[k];
                const WrittenPitch pitch = music.notes[note].written;
                int before = signatureAlter(pitch.step, music.fifths);
                for (std::size_t j = 0; j <= i; ++j)
                    for (std::size_t m = 0; m < rhythm.events[j].notes.size(); ++m) {
                        const std::size_t other = rhythm.events[j].notes[m];
                        const WrittenPitch seen = music.notes[other].written;
                        const bool earlier = j < i || m < k;
                        const bool same = rhythm.events[j].bar == rhythm.events[i].bar &&
                                          seen.step == pitch.step && seen.octave == pitch.octave;
                        if (earlier && same && !tiedFrom(music, rhythm, j, other)) before = seen.alter;
                    }
                const bool tied = tiedFrom(music, rhythm, i, note).has_value();
                REQUIRE(shown[i][k] == (!tied && before != pitch.alter));
            }
    }
}
