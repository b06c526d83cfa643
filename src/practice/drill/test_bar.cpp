// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/drill/test_bar.h"

#include <array>

namespace piolo::practice {

namespace {

constexpr std::int32_t beats = 4;
constexpr std::array<std::uint8_t, beats> keys{60, 62, 64, 65};

std::vector<engine::PlaybackNote> notes() {
    std::vector<engine::PlaybackNote> all;
    for (const std::uint8_t key : keys) {
        const std::uint64_t eighths = 8 * all.size();
        all.push_back({{eighths, 8}, {eighths + 7, 8}, key, false});
    }
    return all;
}

} // namespace

engine::PlaybackScore testBar(engine::Layer layer) {
    engine::PlaybackScore score;
    score.plan.beatsPerBar = beats;
    score.plan.groupStarts = 0b101;
    score.plan.subdivision = 2;
    score.plan.bars = 1;
    score.plan.landing = false;
    score.plan.countInBars = layer == engine::Layer::countIn ? 1 : 0;
    score.plan.standing.tempo = Tempo::bpm(120);
    score.click = layer != engine::Layer::cue;
    score.cue = layer == engine::Layer::cue;
    if (layer == engine::Layer::playback) score.notes = notes();
    return score;
}

} // namespace piolo::practice
