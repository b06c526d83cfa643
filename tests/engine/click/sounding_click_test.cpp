// SPDX-License-Identifier: GPL-3.0-or-later
// A sounding click continues as it began, whatever changes: subtracting the clicks that the events announce
// from the drill's sound leaves silence.
#include "../drill/drill_bench.h"

#include "engine/click/click_voice.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <utility>
#include <vector>

using namespace piolo;
using namespace piolo::engine;

namespace {

constexpr int rate = 48'000;

Mix quiet(Voice voice) {
    Mix mix;
    mix.voice = voice;
    mix.level = 0.3F; // far below the level at which sums are compressed
    mix.layerLevel[static_cast<std::size_t>(Layer::cue)] = 0.0F;
    return mix;
}

/// A single click by itself.
std::vector<float> alone(const Mix& mix, Layer layer, bool barBegins) {
    ClickBank bank;
    bank.prepare({rate});
    bank.strike(mix, layer, 0, barBegins);
    std::vector<float> out(4'000);
    bank.mix(out);
    return out;
}

/// Subtracts the clicks of all pulse events from the sound; `mixAt` has the mix with which each was struck.
float leftOver(DrillBench& bench, const std::map<std::uint64_t, Mix>& mixAt) {
    auto rest = bench.sound;
    rest.resize(rest.size() + 4'000, 0.0F);
    for (const auto& pulse : bench.all(Event::Kind::pulse)) {
        const auto& mix = std::prev(mixAt.upper_bound(pulse.sample))->second;
        const auto click = alone(mix, pulse.layer, pulse.beat == 0);
        for (std::size_t i = 0; i < click.size(); ++i) rest[pulse.sample + i] -= click[i];
    }
    float most = 0;
    for (std::size_t i = 0; i < bench.sound.size(); ++i) most = std::max(most, std::abs(rest[i]));
    return most;
}

/// A drill in sixteenths at 380 BPM: clicks overlap all the time.
DrillPlan dense() {
    auto plan = benchPlan(Tempo::bpm(380));
    plan.subdivision = 4;
    plan.rule.target = Tempo::bpm(400);
    plan.bars = 3;
    return plan;
}

} // namespace

TEST_CASE("the sound is the sum of the clicks that were struck") {
    for (const auto voice : voices) {
        if (isForMeasurement(voice)) continue;
        DrillBench bench;
        bench.send({.kind = Command::Kind::setMix, .mix = quiet(voice)});
        bench.start(dense());
        bench.renderSeconds(4);
        CHECK(bench.count(Event::Kind::pulse) > 50);
        CHECK(leftOver(bench, {{0, quiet(voice)}}) < 1e-6F);
    }
}

TEST_CASE("a change of tempo, a miss, a change of mix and a stop cut no sounding click") {
    DrillBench bench;
    std::map<std::uint64_t, Mix> mixAt{{0, quiet(Voice::metal)}};
    const auto change = [&](const Mix& mix) {
        bench.send({.kind = Command::Kind::setMix, .mix = mix});
        mixAt[bench.now()] = mix;
    };
    change(quiet(Voice::metal));
    bench.start(dense());
    bench.renderTo(50'011, 97);
    auto softer = quiet(Voice::reed);
    softer.level = 0.1F;
    change(softer); // in the middle of a click
    bench.renderTo(60'007, 97);
    bench.adopt({Tempo::bpm(391), 0});
    bench.renderTo(110'003, 97);
    auto mutedBeats = quiet(Voice::wood);
    mutedBeats.muted[static_cast<std::size_t>(Layer::subdivision)] = true;
    change(mutedBeats);
    bench.renderTo(125'001, 97);
    bench.miss();
    bench.renderUntil(Event::Kind::runBegan);
    bench.renderSeconds(0.3);
    bench.stop();
    bench.renderSeconds(0.2);
    CHECK(bench.count(Event::Kind::runEnded) >= 2);
    CHECK(leftOver(bench, mixAt) < 1e-6F);
}
