// SPDX-License-Identifier: GPL-3.0-or-later
#include "plots/staff/staff_pitch.h"

#include "core/music/key_signature.h"
#include "core/music/spelling.h"

#include <algorithm>
#include <array>
#include <cstdlib>
#include <map>
#include <utility>

namespace piolo::plots {

int staffPosition(WrittenPitch pitch, Clef clef) noexcept {
    constexpr WrittenPitch e4{'E', 0, 4}; // the treble clef's lowest line
    constexpr WrittenPitch g2{'G', 0, 2}; // the bass clef's
    return lettersAboveC(pitch) - lettersAboveC(clef == Clef::treble ? e4 : g2);
}

std::vector<int> signaturePositions(int fifths, Clef clef) {
    // Common practice; tests/plots compares it with LilyPond's.
    constexpr std::array sharps{8, 5, 9, 6, 3, 7, 4};
    constexpr std::array flats{4, 7, 3, 6, 2, 5, 1};
    std::vector<int> positions;
    for (int i = 0; i < std::min(7, std::abs(fifths)); ++i)
        positions.push_back((fifths > 0 ? sharps : flats)[static_cast<std::size_t>(i)] -
                            (clef == Clef::bass ? 2 : 0));
    return positions;
}

std::optional<std::size_t> tiedFrom(const StaffMusic& music, const StaffRhythm& rhythm, std::size_t event,
                                    std::size_t note) {
    if (!rhythm.events[event].begins) return note;
    if (event == 0 || !music.notes[note].tiedBefore) return std::nullopt;
    for (const std::size_t before : rhythm.events[event - 1].notes)
        if (music.notes[before].written == music.notes[note].written) return before;
    return std::nullopt;
}

std::vector<std::vector<bool>> accidentalsOf(const StaffMusic& music, const StaffRhythm& rhythm) {
    std::vector<std::vector<bool>> shown(rhythm.events.size());
    std::map<std::pair<char, int>, int> inBar;
    std::size_t bar = 0;
    for (std::size_t i = 0; i < rhythm.events.size(); ++i) {
        const StaffEvent& event = rhythm.events[i];
        if (event.bar != bar) inBar.clear();
        bar = event.bar;
        for (const std::size_t index : event.notes) {
            const WrittenPitch pitch = music.notes[index].written;
            const bool tied = tiedFrom(music, rhythm, i, index).has_value();
            const auto key = std::pair(pitch.step, int{pitch.octave});
            const auto last = inBar.find(key);
            const int before = last == inBar.end() ? signatureAlter(pitch.step, music.fifths) : last->second;
            shown[i].push_back(!tied && pitch.alter != before);
            if (!tied) inBar[key] = pitch.alter;
        }
    }
    return shown;
}

} // namespace piolo::plots
