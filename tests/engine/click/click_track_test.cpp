// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/click/click_track.h"

#include <doctest/doctest.h>

#include <vector>

using namespace piolo;
using namespace piolo::engine;

namespace {

Mix fullImpulse() {
    Mix mix;
    mix.voice = Voice::impulse;
    mix.level = 1.0F;
    return mix;
}

std::vector<float> rendered(const ClickTrack& track, SampleRate rate) {
    TrackPlayer player(track);
    player.prepare(rate, 512);
    std::vector<float> out(player.length());
    player.render(out);
    return out;
}

} // namespace

TEST_CASE("an impulse track is one sample a pulse at its layer's level, and nothing else") {
    ClickTrack track;
    track.subdivision = 2;
    track.stretches = {{Tempo::bpm(120), 1, true}, {Tempo::bpm(120), 1, false}};
    track.mix = fullImpulse();
    const auto out = rendered(track, SampleRate{48'000});
    REQUIRE(out.size() == 8U * 24'000U);
    for (std::size_t i = 0; i < out.size(); ++i) {
        float expected = 0.0F;
        if (i % 96'000 == 0)
            expected = 1.0F;
        else if (i % 24'000 == 0)
            expected = 0.75F;
        else if (i > 96'000 && i % 12'000 == 0)
            expected = 0.5F;
        if (out[i] != expected) FAIL("sample " << i << " is " << out[i] << ", not " << expected);
    }
}
