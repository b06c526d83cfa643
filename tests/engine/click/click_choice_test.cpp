// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/click/click_choice.h"

#include <doctest/doctest.h>

#include <string>

using namespace piolo;
using namespace piolo::engine;

namespace {

constexpr std::uint32_t groups223 = 0b0010101; // 7/8 as 2+2+3

/// One letter per pulse: D downbeat, G group, B beat, s subdivision; '.' is silent. Bars are separated by
/// spaces.
std::string heard(const ClickChoice& choice, int bars, int beats, int parts, std::uint32_t groups = 1,
                  std::uint64_t run = 1) {
    std::string text;
    for (int bar = 0; bar < bars; ++bar) {
        if (bar > 0) text += ' ';
        for (int beat = 0; beat < beats; ++beat)
            for (int part = 0; part < parts; ++part) {
                const auto click = choice.at(run, bar, beat, part, groups);
                text += click.sounds ? "DGBs"[static_cast<std::size_t>(click.layer)] : '.';
            }
    }
    return text;
}

ClickChoice choiceOf(const ClickPattern& pattern, BeatUnit beat = BeatUnit::quarter) {
    return ClickChoice::of(pattern, beat);
}

ClickPattern on(ClickOn place) {
    ClickPattern pattern;
    pattern.on = place;
    return pattern;
}

} // namespace

TEST_CASE("by default every pulse sounds, accented by the meter's groups") {
    CHECK(heard(choiceOf({}), 2, 4, 2) == "DsBsBsBs DsBsBsBs");
    CHECK(heard(choiceOf({}, BeatUnit::eighth), 1, 7, 1, groups223) == "DBGBGBB");
}

TEST_CASE("on downbeats, on 2 and 4 and on off-beats nothing else is heard") {
    CHECK(heard(choiceOf(on(ClickOn::downbeats)), 2, 4, 2) == "D....... D.......");
    CHECK(heard(choiceOf(on(ClickOn::backbeats)), 2, 4, 2) == "..B...B. ..B...B.");
    CHECK(heard(choiceOf(on(ClickOn::backbeats)), 1, 3, 1) == ".B.");
    CHECK(heard(choiceOf(on(ClickOn::backbeats)), 1, 5, 1) == ".B.B.");
    CHECK(heard(choiceOf(on(ClickOn::offbeats)), 1, 4, 2) == ".B.B.B.B");
    CHECK(heard(choiceOf(on(ClickOn::offbeats), BeatUnit::dottedQuarter), 1, 2, 3) == "..B..B");
}

TEST_CASE("accents by hand take the place of the groups, and a silent beat is silent with all its parts") {
    ClickPattern pattern;
    pattern.accents = {Accent::plain, Accent::strong, Accent::silent, Accent::group};
    CHECK(heard(choiceOf(pattern), 1, 4, 2) == "BsDs..Gs");
    CHECK(heard(choiceOf(pattern, BeatUnit::eighth), 1, 7, 1, groups223) == "BD.GGBB");
    pattern.on = ClickOn::offbeats;
    CHECK(heard(choiceOf(pattern), 1, 4, 2) == ".B.D...G");
    pattern.on = ClickOn::backbeats;
    CHECK(heard(choiceOf(pattern), 1, 4, 1) == ".D.G");
}

TEST_CASE("bars in turn: so many click, so many do not, from the first whole bar on") {
    ClickPattern pattern;
    pattern.barsOn = 2;
    pattern.barsOff = 1;
    CHECK(heard(choiceOf(pattern), 7, 2, 1) == "DB DB .. DB DB .. DB");
    CHECK(choiceOf(pattern).at(1, -1, 1, 0, 1).sounds);
    pattern.barsOn = 1;
    pattern.barsOff = 3;
    CHECK(heard(choiceOf(pattern), 5, 2, 1) == "DB .. .. .. DB");
}

TEST_CASE("random silent bars are silent throughout, about as many as requested, and never the pick-up") {
    ClickPattern pattern;
    pattern.silentBars = 25;
    const auto choice = choiceOf(pattern);
    int silent = 0;
    for (int bar = 0; bar < 4'000; ++bar) {
        const bool sounds = choice.at(1, bar, 0, 0, 1).sounds;
        silent += sounds ? 0 : 1;
        for (int beat = 0; beat < 4; ++beat)
            for (int part = 0; part < 2; ++part) CHECK(choice.at(1, bar, beat, part, 1).sounds == sounds);
    }
    CHECK(silent > 870); // 1000 ± 4.7 standard deviations of a binomial distribution
    CHECK(silent < 1'130);
    pattern.silentBars = 100;
    CHECK(heard(choiceOf(pattern), 3, 2, 1) == ".. .. ..");
    CHECK(choiceOf(pattern).at(1, -1, 0, 0, 1).sounds);
}

TEST_CASE("beats left out at random are left out with their subdivisions, about as many as requested") {
    ClickPattern pattern;
    pattern.leftOutBeats = 10;
    const auto choice = choiceOf(pattern);
    int leftOut = 0;
    for (int bar = 0; bar < 2'500; ++bar)
        for (int beat = 0; beat < 4; ++beat) {
            const bool sounds = choice.at(1, bar, beat, 0, 1).sounds;
            leftOut += sounds ? 0 : 1;
            CHECK(choice.at(1, bar, beat, 1, 1).sounds == sounds);
        }
    CHECK(leftOut > 860); // 1000 ± 4.7 standard deviations of a binomial distribution
    CHECK(leftOut < 1'140);
}

TEST_CASE(
    "the same seed, run, bar and beat always choose the same; another run or seed chooses differently") {
    ClickPattern pattern;
    pattern.silentBars = 50;
    pattern.leftOutBeats = 20;
    const auto first = heard(choiceOf(pattern), 40, 4, 1);
    CHECK(heard(choiceOf(pattern), 40, 4, 1) == first);
    CHECK(heard(choiceOf(pattern), 40, 4, 1, 1, 2) != first);
    pattern.seed = 2;
    CHECK(heard(choiceOf(pattern), 40, 4, 1) != first);
}

TEST_CASE("a beat that is silent for one reason stays silent if another is added") {
    ClickPattern one;
    one.silentBars = 40;
    ClickPattern both = one;
    both.leftOutBeats = 30;
    both.barsOff = 1;
    both.accents = {Accent::strong, Accent::silent};
    const auto alone = heard(choiceOf(one), 50, 4, 1);
    const auto together = heard(choiceOf(both), 50, 4, 1);
    REQUIRE(alone.size() == together.size());
    for (std::size_t i = 0; i < alone.size(); ++i)
        if (alone[i] == '.') CHECK(together[i] == '.');
    CHECK(alone != together);
}

TEST_CASE("the landing note is a downbeat, or has the accent set for beat 1") {
    ClickPattern pattern;
    CHECK(choiceOf(pattern).landing() == Layer::downbeat);
    pattern.accents = {Accent::plain};
    CHECK(choiceOf(pattern).landing() == Layer::beat);
    pattern.accents = {Accent::silent};
    CHECK(choiceOf(pattern).landing() == Layer::downbeat);
}
