// SPDX-License-Identifier: GPL-3.0-or-later
// A drill engine rendered in virtual time; keeps its sound and its events.
#pragma once

#include "engine/drill/drill_engine.h"

#include <algorithm>
#include <cstdint>
#include <optional>
#include <span>
#include <vector>

namespace piolo::engine {

class DrillBench {
public:
    explicit DrillBench(SampleRate rate = SampleRate{48'000}) : rate_(rate) {
        engine.prepare(rate, 1024);
        Mix mix;
        mix.voice = Voice::impulse;
        mix.level = 1.0F;
        send({.kind = Command::Kind::setMix, .mix = mix});
    }

    DrillEngine engine;
    std::vector<float> sound;
    std::vector<Event> events;

    [[nodiscard]] std::uint64_t now() const { return engine.rendered(); }
    void send(const Command& command) { engine.send(command); }
    void start(const DrillPlan& plan) { send({.kind = Command::Kind::start, .plan = plan}); }
    /// The key for a miss, pressed when `sample`, or the last rendered sample, was heard.
    void miss(std::uint64_t sample) { send({.kind = Command::Kind::miss, .sample = sample}); }
    void miss() { miss(now()); }
    /// The same with a press number, so that it can be withdrawn.
    void press(std::uint64_t number) {
        send({.kind = Command::Kind::miss, .sample = now(), .press = number});
    }
    void withdraw(std::uint64_t number) { send({.kind = Command::Kind::withdraw, .press = number}); }
    void clean() { send({.kind = Command::Kind::clean, .sample = now()}); }
    void stop() { send({.kind = Command::Kind::stop}); }
    void resume() { send({.kind = Command::Kind::resume}); }
    void adopt(Standing standing, std::uint64_t runsEnded) {
        send({.kind = Command::Kind::adopt, .runsEnded = runsEnded, .standing = standing});
    }
    /// The same from a sender that has seen all events.
    void adopt(Standing standing) {
        adopt(standing, count(Event::Kind::runEnded) + count(Event::Kind::lateMiss));
    }

    /// Renders up to that sample, in blocks of at most `block`.
    void renderTo(std::uint64_t sample, std::size_t block = 480) {
        while (now() < sample) {
            const auto count = std::min<std::uint64_t>(block, sample - now());
            const auto begin = sound.size();
            sound.resize(begin + count);
            engine.render(std::span(sound).subspan(begin));
            collect();
        }
    }
    void renderSeconds(double seconds) {
        renderTo(now() + static_cast<std::uint64_t>(seconds * rate_.hertz));
    }
    /// Renders in small blocks until another event of that kind arrives; nothing if none arrives within ten
    /// minutes.
    std::optional<Event> renderUntil(Event::Kind kind) {
        const auto limit = now() + 600ULL * static_cast<std::uint64_t>(rate_.hertz);
        while (now() < limit) {
            const auto seen = events.size();
            renderTo(now() + 48, 48);
            for (std::size_t i = seen; i < events.size(); ++i)
                if (events[i].kind == kind) return events[i];
        }
        return std::nullopt;
    }
    void collect() {
        Event event;
        while (engine.read(event)) events.push_back(event);
    }

    [[nodiscard]] std::vector<Event> all(Event::Kind kind) const {
        std::vector<Event> found;
        for (const auto& event : events)
            if (event.kind == kind) found.push_back(event);
        return found;
    }
    [[nodiscard]] Event last(Event::Kind kind) const { return all(kind).back(); }
    [[nodiscard]] std::size_t count(Event::Kind kind) const { return all(kind).size(); }
    /// The samples that are not silent, starting at `from`.
    [[nodiscard]] std::vector<std::uint64_t> onsets(std::uint64_t from = 0) const {
        std::vector<std::uint64_t> found;
        for (auto i = from; i < sound.size(); ++i)
            if (sound[i] != 0.0F) found.push_back(i);
        return found;
    }

private:
    SampleRate rate_;
};

/// 2 bars of 4/4 at 120 BPM (a beat is 24000 samples at 48 kHz), one bar of count-in, two beats of breath.
inline DrillPlan benchPlan(Tempo tempo = Tempo::bpm(120), std::int32_t streak = 0) {
    DrillPlan plan;
    plan.bars = 2;
    plan.start = Tempo::bpm(60);
    plan.rule.target = Tempo::bpm(160);
    plan.standing = {tempo, streak};
    return plan;
}

} // namespace piolo::engine
