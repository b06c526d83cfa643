// SPDX-License-Identifier: GPL-3.0-or-later
#include "drill_script.h"

#include "engine/click/click_track.h"
#include "engine/drill/drill_engine.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <array>
#include <cstring>
#include <functional>
#include <span>
#include <tuple>
#include <vector>

using namespace piolo;
using namespace piolo::engine;

namespace {

using NextBlock = std::function<std::size_t()>;

struct Played {
    std::vector<float> sound;
    std::vector<Event> events;
};

/// Plays a script in blocks of the requested sizes; a block is cut short only where the next command arrives.
Played play(const std::vector<Timed>& script, SampleRate rate, std::uint64_t length, const NextBlock& next) {
    DrillEngine engine;
    engine.prepare(rate, 4'096);
    Played played;
    played.sound.resize(length);
    std::size_t sent = 0;
    for (std::uint64_t now = 0; now < length;) {
        for (; sent < script.size() && script[sent].sample <= now; ++sent) engine.send(script[sent].command);
        const auto limit = sent < script.size() ? std::min(script[sent].sample, length) : length;
        const auto count = std::min<std::uint64_t>(next(), limit - now);
        engine.render(std::span(played.sound).subspan(now, count));
        now += count;
        for (Event event; engine.read(event);) played.events.push_back(event);
    }
    return played;
}

auto fieldsOf(const Event& event) {
    return std::tuple(event.kind, event.sample, event.run, event.runsEnded, event.tempo, event.before.tempo,
                      event.before.streak, event.after.tempo, event.after.streak, event.mark,
                      event.voidReason, event.pause, event.phase, event.layer, event.bar, event.beat,
                      event.part, event.sounds, event.waits, event.fullStreak, event.secure, event.apart,
                      event.turnOver);
}

bool sameBits(const std::vector<float>& a, const std::vector<float>& b) {
    return a.size() == b.size() && std::memcmp(a.data(), b.data(), a.size() * sizeof(float)) == 0;
}

bool sameEvents(const std::vector<Event>& a, const std::vector<Event>& b) {
    return std::equal(a.begin(), a.end(), b.begin(), b.end(),
                      [](const Event& x, const Event& y) { return fieldsOf(x) == fieldsOf(y); });
}

} // namespace

TEST_CASE("any split into blocks gives the same samples and events, bit for bit") {
    const auto seed = seedOr(20'261);
    INFO("PIOLO_SEED=" << seed);
    Random random(seed);
    std::size_t events = 0;
    for (const int hertz : {8'000, 44'100, 48'000, 192'000})
        for (int round = 0; round < 6; ++round) {
            const auto rate = static_cast<std::uint64_t>(hertz);
            const auto length = 12 * rate;
            const auto script = anyScript(random, rate, length, rate);
            const auto whole = play(script, {hertz}, length, [&] { return length; });
            const auto odd = play(script, {hertz}, length, [] { return 61U; });
            const auto mixed = play(script, {hertz}, length, [&] { return 1 + random() % 3'000; });
            CAPTURE(hertz);
            CAPTURE(round);
            CHECK(sameBits(whole.sound, odd.sound));
            CHECK(sameBits(whole.sound, mixed.sound));
            CHECK(sameEvents(whole.events, odd.events));
            CHECK(sameEvents(whole.events, mixed.events));
            events += whole.events.size();
        }
    CHECK(events > 1'000);
}

TEST_CASE("turns of a set do not depend on blocks either") {
    Random random(seedOr(20'262));
    std::size_t over = 0;
    for (int round = 0; round < 12; ++round) {
        auto script = anyScript(random, 48'000, 2'000'000, 48'000);
        for (std::uint64_t at = 0; at < 2'000'000; at += 150'000 + random() % 100'000) {
            Timed start{at, {.kind = Command::Kind::start, .plan = anyPlan(random)}};
            start.command.plan.turn = {1 + static_cast<std::int32_t>(random() % 4), 1, 0, true};
            script.push_back(start);
        }
        std::ranges::stable_sort(script, {}, &Timed::sample);
        const auto whole = play(script, {48'000}, 2'000'000, [] { return 2'000'000U; });
        const auto mixed = play(script, {48'000}, 2'000'000, [&] { return 1 + random() % 3'000; });
        CHECK(sameBits(whole.sound, mixed.sound));
        CHECK(sameEvents(whole.events, mixed.events));
        over += static_cast<std::size_t>(std::ranges::count(whole.events, true, &Event::turnOver));
    }
    CHECK(over > 20);
}

TEST_CASE("one sample at a time sounds as all at once") {
    Random random(7);
    const auto script = anyScript(random, 8'000, 40'000, 8'000);
    const auto whole = play(script, {8'000}, 40'000, [] { return 40'000U; });
    const auto single = play(script, {8'000}, 40'000, [] { return 1U; });
    CHECK(sameBits(whole.sound, single.sound));
    CHECK(sameEvents(whole.events, single.events));
}

TEST_CASE("a written track does not depend on its blocks either") {
    ClickTrack track;
    track.subdivision = 4;
    track.click.swing = {5, 3};
    track.click.swung = SwungNotes::sixteenths;
    track.click.leftOutBeats = 20;
    track.click.breaths = {{2, 1, 1}};
    track.stretches = {{Tempo::bpm(137), 1, true}, {Tempo::bpm(137), 2, false}, {Tempo::bpm(251), 2, false}};
    const auto render = [&](std::size_t block) {
        TrackPlayer player(track);
        player.prepare({44'100}, static_cast<int>(block));
        std::vector<float> out(player.length() + 5'000);
        for (std::size_t at = 0; at < out.size(); at += block)
            player.render(std::span(out).subspan(at, std::min(block, out.size() - at)));
        return out;
    };
    const auto whole = render(1'000'000);
    for (const std::size_t block : {1, 17, 512, 4'096}) CHECK(sameBits(whole, render(block)));
}
