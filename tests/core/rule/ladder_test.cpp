// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rule/ladder.h"

#include <doctest/doctest.h>

using namespace piolo;

namespace {

std::vector<std::int32_t> ladderOf(Rule rule, std::int32_t present) {
    std::vector<std::int32_t> bpm;
    for (const Tempo rung : rungs(rule, Tempo::bpm(present))) bpm.push_back(rung.thousandths() / 1000);
    return bpm;
}
Rule between(std::int32_t floor, std::int32_t target, std::int32_t climb) {
    Rule rule;
    rule.floor = Tempo::bpm(floor);
    rule.target = Tempo::bpm(target);
    rule.climb = climb;
    return rule;
}

} // namespace

TEST_CASE("rungs are one climb apart through the current tempo, with the last steps shortened") {
    CHECK(ladderOf(between(60, 75, 4), 67) == std::vector<std::int32_t>{60, 63, 67, 71, 75});
    CHECK(ladderOf(between(60, 74, 4), 66) == std::vector<std::int32_t>{60, 62, 66, 70, 74});
    CHECK(ladderOf(between(60, 60, 4), 60) == std::vector<std::int32_t>{60});
}

TEST_CASE("the current tempo is a rung even below the floor and above the target") {
    CHECK(ladderOf(between(60, 66, 4), 55) == std::vector<std::int32_t>{55, 59, 63, 66});
    CHECK(ladderOf(between(60, 66, 4), 70) == std::vector<std::int32_t>{60, 62, 66, 70});
}

TEST_CASE("in notches the rungs are values of the metronome scale") {
    Rule rule = between(58, 72, 1);
    rule.step = StepKind::notches;
    CHECK(ladderOf(rule, 63) == std::vector<std::int32_t>{58, 60, 63, 66, 69, 72});
    CHECK(ladderOf(rule, 64) == std::vector<std::int32_t>{58, 60, 63, 64, 66, 69, 72});
}

TEST_CASE("each rung above the current one is where a full streak climbs to") {
    const Rule rule = between(40, 97, 3);
    const std::vector<Tempo> ladder = rungs(rule, Tempo::bpm(50));
    Standing standing{Tempo::bpm(50), 0};
    for (const Tempo rung : ladder) {
        if (rung <= standing.tempo) continue;
        standing = afterClean({standing.tempo, rule.cleanRuns - 1}, rule).after;
        CHECK(standing.tempo == rung);
    }
    CHECK(standing.tempo == rule.target);
}

TEST_CASE("a sheet's rungs are those from its lowest up, and only one at or above the target") {
    const Rule rule = between(60, 75, 4);
    const auto all = rungs(rule, Tempo::bpm(67));
    CHECK(rungsUp(rule, Tempo::bpm(67)) == std::vector<Tempo>(all.begin() + 2, all.end()));
    CHECK(rungsUp(rule, Tempo::bpm(75)) == std::vector<Tempo>{Tempo::bpm(75)});
    CHECK(rungsUp(rule, Tempo::bpm(80)) == std::vector<Tempo>{Tempo::bpm(80)});
}
