// SPDX-License-Identifier: GPL-3.0-or-later
// Passages with notes for playbacks, and where their notes sound.
#pragma once

#include "engine/playback/playback_track.h"

#include <algorithm>
#include <cstdint>
#include <span>
#include <vector>

namespace piolo::engine {

/// Two bars of 4/4 without count-in and landing note.
inline Passage plainPassage(std::vector<Note> notes = {}) {
    Passage passage;
    passage.music.bars = 2;
    passage.music.countInBars = 0;
    passage.music.landing = false;
    passage.notes = std::move(notes);
    return passage;
}

inline Note noteAt(Fraction onset, Fraction length, std::int32_t key = 69) {
    Note note;
    note.sounding = key;
    note.onset = onset;
    note.length = length;
    return note;
}

/// The notes alone, or with the clicks.
inline std::vector<float> soundOf(const PlaybackScore& score, SampleRate rate, bool clicks = false,
                                  std::size_t block = 4'096) {
    Mix mix;
    mix.level = 1.0F;
    mix.muted.fill(!clicks);
    mix.muted[static_cast<std::size_t>(Layer::playback)] = false;
    PlaybackTrack track(score, mix);
    track.prepare(rate, static_cast<int>(block));
    std::vector<float> sound(track.length());
    for (auto rest = std::span(sound); !rest.empty();) {
        const auto part = rest.first(std::min(block, rest.size()));
        track.render(part);
        rest = rest.subspan(part.size());
    }
    return sound;
}

struct Sounded {
    std::uint64_t first = 0;
    std::uint64_t last = 0;
};

/// Stretches of sound separated by at least `gap` samples of exact silence.
inline std::vector<Sounded> stretchesOf(const std::vector<float>& sound, std::uint64_t gap = 64) {
    std::vector<Sounded> found;
    for (std::uint64_t i = 0; i < sound.size(); ++i) {
        if (sound[i] == 0.0F) continue;
        if (found.empty() || i > found.back().last + gap) found.push_back({i, i});
        found.back().last = i;
    }
    return found;
}

} // namespace piolo::engine
