// SPDX-License-Identifier: GPL-3.0-or-later
// Random sets, played with random marks, compared with a naive model of turns, rule and journal.
#include "../../engine/drill/drill_script.h"
#include "set_fixture.h"

#include "core/rule/rule.h"

using namespace piolo;
using piolo::practice::DrillControl;
using piolo::practice::TurnLength;
using piolo::test::SetFixture;
using Kind = engine::Event::Kind;

namespace {

enum class Played : std::uint8_t { clean, missed, late, takenBack };

/// The runs of each passage in their order; the rule folds them at the end.
class NaiveSet {
public:
    NaiveSet(std::size_t passages, int runsEach) : marks_(passages), runsEach_(runsEach) {}

    void play(Played how) {
        const std::size_t passage = order_.size() / static_cast<std::size_t>(runsEach_) % marks_.size();
        order_.push_back(passage);
        if (how != Played::takenBack)
            marks_[passage].push_back(how == Played::clean ? Mark::clean : Mark::missed);
    }
    [[nodiscard]] const std::vector<std::size_t>& order() const { return order_; }
    [[nodiscard]] Standing standingOf(std::size_t passage) const {
        const Tempi tempi = SetFixture::passage(passage).tempi;
        Standing standing{tempi.start, 0};
        for (const Mark mark : marks_[passage])
            standing = afterRun(standing, standing.tempo, mark, tempi.rule).after;
        return standing;
    }

private:
    std::vector<std::vector<Mark>> marks_;
    std::vector<std::size_t> order_;
    int runsEach_;
};

/// Plays one run, and what belongs to it before the next one begins.
void playRun(SetFixture& fixture, Played how, engine::Random& random) {
    REQUIRE(fixture.playUntil(Kind::runBegan));
    if (how == Played::missed) {
        fixture.play(static_cast<double>(engine::between(random, 20, 200)) / 100);
        fixture.press();
    }
    REQUIRE(fixture.playUntil(Kind::runEnded));
    fixture.play(static_cast<double>(engine::between(random, 20, 120)) / 100);
    if (how == Played::late) fixture.press();
    if (how == Played::takenBack) fixture.control->takeBack();
    fixture.play(0.2);
    if (fixture.control->state() == DrillControl::State::paused) fixture.control->goOn();
}

} // namespace

TEST_CASE("random sets are played and recorded as a naive model says") {
    const auto seed = engine::seedOr(20'263);
    INFO("PIOLO_SEED=" << seed);
    engine::Random random(seed);
    std::size_t lateAcross = 0;
    for (int round = 0; round < 12; ++round) {
        CAPTURE(round);
        const auto passages = static_cast<std::size_t>(engine::between(random, 2, 4));
        const auto runsEach = static_cast<int>(engine::between(random, 1, 4));
        SetFixture fixture;
        NaiveSet naive(passages, runsEach);
        REQUIRE(fixture.startSet(passages, runsEach));
        for (int run = 0; run < 20; ++run) {
            const auto how = static_cast<Played>(engine::between(random, 0, 5) % 4);
            playRun(fixture, how, random);
            naive.play(how);
            lateAcross += how == Played::late && (run + 1) % runsEach == 0 ? 1 : 0;
        }
        fixture.stop();
        CHECK(fixture.turns() == naive.order());
        for (std::size_t passage = 0; passage < passages; ++passage) {
            CAPTURE(passage);
            CHECK(fixture.standingOf(passage) == naive.standingOf(passage));
        }
    }
    CHECK(lateAcross > 5);
}
