// SPDX-License-Identifier: GPL-3.0-or-later
#include "staff_passages.h"

#include "core/music/key_signature.h"
#include "core/time/fraction_sum.h"

#include <algorithm>
#include <array>

namespace piolo::plots {

namespace {

int upTo(std::mt19937& random, int most) {
    return static_cast<int>(random() % static_cast<unsigned>(most + 1));
}
bool oneIn(std::mt19937& random, int many) { return upTo(random, many - 1) == 0; }

Meter randomMeter(std::mt19937& random) {
    constexpr std::array<std::array<const char*, 3>, 9> meters{{{"4/4", "1/4", ""},
                                                                {"3/4", "1/4", ""},
                                                                {"2/2", "1/2", ""},
                                                                {"6/8", "3/8", ""},
                                                                {"9/8", "3/8", ""},
                                                                {"7/8", "1/8", "2+2+3"},
                                                                {"5/8", "1/8", ""},
                                                                {"5/4", "1/4", ""},
                                                                {"3/8", "1/8", ""}}};
    const auto& one = meters[static_cast<std::size_t>(upTo(random, 8))];
    return *Meter::parse(one[0], one[1], one[2]);
}

/// Fills a passage beat by beat.
class Writer {
public:
    Writer(std::mt19937& random, StaffMusic& music) : random_(random), music_(music) {
        low_ = 9 + upTo(random, 30); // E1 is 9 letters above C0, C8 is 56
        high_ = std::min(56, low_ + 4 + upTo(random, 25));
        letters_ = low_ + upTo(random, high_ - low_);
    }

    void write(Fraction beat, int beats) {
        for (int i = 0; i < beats; ++i) {
            constexpr std::array plain{1, 2, 3, 4, 5, 6, 7, 8};
            constexpr std::array dotted{1, 2, 3, 4, 6};
            const bool isDotted = beat.numerator == 3;
            const int count = isDotted ? dotted[static_cast<std::size_t>(upTo(random_, 4))]
                                       : plain[static_cast<std::size_t>(upTo(random_, 7))];
            const auto each = *reducedFraction(beat.numerator, std::int64_t{beat.denominator} * count);
            for (int k = 0; k < count; ++k) add(each);
        }
    }

private:
    void add(Fraction length) {
        letters_ = std::clamp(letters_ + upTo(random_, 8) - 4, low_, high_);
        const bool rest = !tie_ && oneIn(random_, 7);
        if (!rest) {
            addNote(length);
            if (oneIn(random_, 8)) addChord(length);
        }
        at_ = *sum(at_, length);
    }

    void addNote(Fraction length) {
        Note note;
        note.onset = at_;
        note.length = length;
        note.written = inKey(letters_, music_.fifths);
        if (oneIn(random_, 4)) note.written.alter = static_cast<std::int8_t>(upTo(random_, 4) - 2);
        if (tie_) note.written = music_.notes[last_].written;
        note.tiedBefore = tie_;
        tie_ = oneIn(random_, 8);
        note.tiedAfter = tie_;
        note.articulation.staccato = oneIn(random_, 4);
        note.articulation.tenuto = oneIn(random_, 8);
        note.articulation.accent = oneIn(random_, 8);
        note.articulation.slurEnds = slur_ && oneIn(random_, 3);
        if (note.articulation.slurEnds) slur_ = false;
        note.articulation.slurBegins = !slur_ && oneIn(random_, 6);
        slur_ = slur_ || note.articulation.slurBegins;
        last_ = music_.notes.size();
        music_.notes.push_back(note);
    }

    void addChord(Fraction length) {
        for (int more = 1 + upTo(random_, 2), at = letters_; more > 0; --more) {
            Note note;
            note.onset = at_;
            note.length = length;
            note.written = inKey(at += 1 + upTo(random_, 4), music_.fifths);
            if (note.written.octave < 9) music_.notes.push_back(note);
        }
    }

    std::mt19937& random_;
    StaffMusic& music_;
    int low_ = 0;
    int high_ = 0;
    int letters_ = 0;
    Fraction at_;
    std::size_t last_ = 0;
    bool tie_ = false;
    bool slur_ = false;
};

} // namespace

WrittenPitch inKey(int letters, int fifths) {
    WrittenPitch pitch;
    pitch.step = "CDEFGAB"[letters % 7];
    pitch.octave = static_cast<std::int8_t>(letters / 7);
    pitch.alter = signatureAlter(pitch.step, fifths);
    return pitch;
}

StaffMusic evenScale(Clef clef, int fifths, int pulses) {
    StaffMusic music;
    music.clef = clef;
    music.fifths = static_cast<std::int8_t>(fifths);
    music.music.bars = 2;
    const int tonic = ((fifths * 4) % 7 + 7) % 7 + (clef == Clef::treble ? 28 : 14);
    for (int i = 0; i < 8 * pulses; ++i) {
        const int turn = i % 28;
        Note note;
        note.written = inKey(tonic + (turn <= 14 ? turn : 28 - turn), fifths);
        note.onset = *reducedFraction(i, 4 * pulses);
        note.length = *reducedFraction(1, 4 * pulses);
        music.notes.push_back(note);
    }
    Note landing;
    landing.written = inKey(tonic, fifths);
    landing.onset = {2, 1};
    landing.length = {1, 1};
    music.notes.push_back(landing);
    return music;
}

StaffMusic randomPassage(std::mt19937& random) {
    StaffMusic music;
    music.clef = oneIn(random, 2) ? Clef::bass : Clef::treble;
    music.fifths = static_cast<std::int8_t>(upTo(random, 14) - 7);
    music.endsHere = oneIn(random, 2);
    music.music.meter = randomMeter(random);
    music.music.bars = 1 + upTo(random, 5);
    music.music.firstBar = upTo(random, 900);
    const Meter& meter = music.music.meter;
    const Fraction beat = fractionOf(meter.beat());
    const int before = meter.groups().empty() ? upTo(random, meter.beatsPerBar() - 1) : 0;
    music.music.pickup = *reducedFraction(std::int64_t{before} * beat.numerator, beat.denominator);
    Writer(random, music).write(beat, before + meter.beatsPerBar() * music.music.bars);
    return music;
}

} // namespace piolo::plots
