// SPDX-License-Identifier: GPL-3.0-or-later
// Random drills that can be repeated: commands at given samples, from a seed.
#pragma once

#include "engine/drill/drill_engine.h"

#include <cstdint>
#include <cstdlib>
#include <random>
#include <string>
#include <vector>

namespace piolo::engine {

/// The seed of this test run: PIOLO_SEED, or `usual`.
inline std::uint64_t seedOr(std::uint64_t usual) {
    const char* given = std::getenv("PIOLO_SEED");
    return given == nullptr ? usual : std::stoull(given);
}

struct Timed {
    std::uint64_t sample = 0;
    Command command;
};

using Random = std::mt19937_64;

inline std::int64_t between(Random& random, std::int64_t least, std::int64_t most) {
    return least + static_cast<std::int64_t>(random() % static_cast<std::uint64_t>(most - least + 1));
}

inline Tempo anyTempo(Random& random) { return Tempo::clampedThousandths(between(random, 120'000, 400'000)); }

/// One pattern in three is the default.
inline void anyClick(Random& random, DrillPlan& plan) {
    const auto small = [&](std::int64_t least, std::int64_t most) {
        return static_cast<std::int32_t>(between(random, least, most));
    };
    if (small(0, 2) == 0) return;
    plan.click.on = static_cast<ClickOn>(small(0, 3));
    plan.click.offbeat = plan.subdivision - 1;
    plan.click.accented = small(0, 5);
    for (auto& accent : plan.click.accents) accent = static_cast<Accent>(small(0, 3));
    plan.click.barsOn = small(1, 2);
    plan.click.barsOff = small(0, 1);
    plan.click.silentBars = small(0, 1) * 30;
    plan.click.leftOutBeats = small(0, 1) * 30;
    plan.click.seed = small(0, 999);
    const auto shorter = small(1, 33);
    plan.swing = {small(shorter, 3 * std::int64_t{shorter}), shorter};
    for (std::int32_t bar = -1; bar < 3; ++bar)
        plan.breaths.places[plan.breaths.count++] = {bar, small(0, 4), small(1, 3)};
    plan.breaths.below = anyTempo(random);
}

inline DrillPlan anyPlan(Random& random) {
    DrillPlan plan;
    plan.beatsPerBar = static_cast<std::int32_t>(between(random, 1, 5));
    plan.groupStarts = static_cast<std::uint32_t>(random() & 31U);
    plan.subdivision = static_cast<std::int32_t>(between(random, 1, 8));
    plan.pickupBeats = {static_cast<std::int32_t>(between(random, 0, 2)), 3};
    plan.bars = static_cast<std::int32_t>(between(random, 0, 3));
    plan.landing = between(random, 0, 1) == 1;
    plan.countInBars = static_cast<std::int32_t>(between(random, 0, 2));
    plan.breathBeats = static_cast<std::int32_t>(between(random, 0, 3));
    plan.gapMillisAfterMiss = static_cast<std::int32_t>(between(random, 0, 2) * 700);
    plan.playOn = between(random, 0, 3) == 0;
    plan.pauseAfterRuns = static_cast<std::int32_t>(between(random, 0, 9));
    plan.rule.step = between(random, 0, 1) == 0 ? StepKind::bpm : StepKind::notches;
    plan.rule.cleanRuns = static_cast<std::int32_t>(between(random, 1, 4));
    plan.rule.floor = Tempo::bpm(100);
    plan.rule.target = Tempo::bpm(400);
    plan.start = Tempo::bpm(150);
    plan.standing = {anyTempo(random), 0};
    anyClick(random, plan);
    return plan;
}

/// One in two is no turn.
inline Turn anyTurn(Random& random) {
    Turn turn;
    turn.place = static_cast<std::int32_t>(between(random, 0, Turn::mostPlaces));
    turn.follows = between(random, 0, 1) == 1;
    if (between(random, 0, 1) == 0) return turn;
    turn.runs = static_cast<std::int32_t>(between(random, 0, 40));
    turn.seconds = static_cast<std::int32_t>(between(random, 0, 120));
    return turn;
}

inline Mix anyMix(Random& random) {
    Mix mix;
    mix.voice = voices[random() % voices.size()];
    mix.level = static_cast<float>(between(random, 1, 10)) / 10.0F;
    for (auto& level : mix.layerLevel) level = static_cast<float>(between(random, 0, 4)) / 4.0F;
    mix.muted[random() % layerCount] = true;
    return mix;
}

inline Command anyCommand(Random& random, std::uint64_t now, std::uint64_t rate) {
    Command command;
    const auto lag = random() % (rate / 4 + 1);
    command.sample = lag < now ? now - lag : 0;
    switch (between(random, 0, 11)) {
    case 0:
        command.kind = Command::Kind::setMix;
        break;
    case 1:
        command.kind = Command::Kind::adopt;
        break;
    case 2:
    case 3:
        command.kind = Command::Kind::clean;
        break;
    case 4:
    case 5:
        command.kind = Command::Kind::resume;
        break;
    default:
        command.kind = Command::Kind::miss;
        break;
    }
    command.mix = anyMix(random);
    command.standing = {anyTempo(random), 0};
    command.runsEnded = static_cast<std::uint64_t>(between(random, 0, 3)); // rarely all of them
    return command;
}

/// A drill that starts at sample 0 and gets a command about every `spacing` samples.
inline std::vector<Timed> anyScript(Random& random, std::uint64_t rate, std::uint64_t length,
                                    std::uint64_t spacing) {
    std::vector<Timed> script(2);
    script[0].command.kind = Command::Kind::setMix;
    script[0].command.mix = anyMix(random);
    script[1].command.kind = Command::Kind::start;
    script[1].command.plan = anyPlan(random);
    for (std::uint64_t at = random() % spacing; at < length; at += 1 + random() % (2 * spacing))
        script.push_back({at, anyCommand(random, at, rate)});
    return script;
}

} // namespace piolo::engine
