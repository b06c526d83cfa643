// SPDX-License-Identifier: GPL-3.0-or-later
// The engine applies the rule itself; a reader that folds its events with core's rule gets the same
// standings.
#include "drill_script.h"

#include "engine/drill/drill_engine.h"

#include <doctest/doctest.h>

#include <array>
#include <cstdint>
#include <span>
#include <vector>

using namespace piolo;
using namespace piolo::engine;

namespace {

/// A reader that knows only the events and core's rule.
class Reader {
public:
    Reader(Standing start, Rule rule) : start_(start), rule_(rule) {}

    void read(const Event& event) {
        switch (event.kind) {
        case Event::Kind::runEnded:
            CHECK(event.before == standing());
            CHECK(event.run > lastRun_);
            CHECK(event.runsEnded == ++ended_);
            lastRun_ = event.run;
            steps_.push_back({event.run, event.tempo, event.mark});
            CHECK(event.after == standing());
            break;
        case Event::Kind::lateMiss:
            CHECK(event.runsEnded == ++ended_);
            missLate(event.run);
            CHECK(event.after == standing());
            ++lateMisses;
            break;
        case Event::Kind::tempoMoved:
            CHECK(event.after == standing());
            break;
        case Event::Kind::runBegan:
            CHECK(event.run > begun_);
            if (begun_ > lastRun_) ++overtaken;
            begun_ = event.run;
            break;
        case Event::Kind::adopted:
            start_ = event.after;
            steps_.clear();
            ++adopted;
            break;
        default:
            break;
        }
    }
    int lateMisses = 0;
    int adopted = 0;
    int overtaken = 0; ///< runs that began and never ended

private:
    struct Step {
        std::uint64_t run;
        Tempo tempo;
        Mark mark;
    };
    [[nodiscard]] Standing standing() const {
        Standing standing = start_;
        for (const auto& step : steps_) standing = afterRun(standing, step.tempo, step.mark, rule_).after;
        return standing;
    }
    void missLate(std::uint64_t run) {
        for (auto& step : steps_)
            if (step.run == run) {
                CHECK(step.mark == Mark::clean);
                step.mark = Mark::missed;
                return;
            }
        FAIL("a late miss of a run that was never reported");
    }

    Standing start_;
    Rule rule_;
    std::vector<Step> steps_;
    std::uint64_t lastRun_ = 0;
    std::uint64_t begun_ = 0;
    std::uint64_t ended_ = 0;
};

struct Tolls {
    int lateMisses = 0;
    int adopted = 0;
    int overtaken = 0;
    std::uint64_t runs = 0;
};

void drillOnce(Random& random, Tolls& tolls) {
    constexpr std::uint64_t rate = 8'000;
    constexpr std::uint64_t length = 120 * rate;
    const auto script = anyScript(random, rate, length, rate);
    Reader reader(script[1].command.plan.standing, script[1].command.plan.rule);
    DrillEngine engine;
    engine.prepare({rate}, 1'024);
    std::array<float, 400> out{};
    std::size_t sent = 0;
    while (engine.rendered() < length) {
        for (; sent < script.size() && script[sent].sample <= engine.rendered(); ++sent)
            engine.send(script[sent].command);
        engine.render(std::span(out).first(1 + random() % out.size()));
        for (Event event; engine.read(event);) {
            reader.read(event);
            if (event.kind == Event::Kind::runEnded) ++tolls.runs;
        }
    }
    tolls.lateMisses += reader.lateMisses;
    tolls.adopted += reader.adopted;
    tolls.overtaken += reader.overtaken;
}

} // namespace

TEST_CASE("the drill's standings are those of core's fold over its events") {
    const auto seed = seedOr(4'711);
    INFO("PIOLO_SEED=" << seed);
    Random random(seed);
    Tolls tolls;
    for (int round = 0; round < 60; ++round) {
        CAPTURE(round);
        drillOnce(random, tolls);
    }
    // The random drills covered every case.
    CHECK(tolls.runs > 500);
    CHECK(tolls.lateMisses > 20);
    CHECK(tolls.adopted > 20);
    CHECK(tolls.overtaken > 3);
}
