// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/keys/pedal_press.h"

#include <doctest/doctest.h>

using piolo::practice::PedalAct;
using piolo::practice::PedalPress;
using Kind = PedalAct::Kind;

namespace {

constexpr std::int64_t ms = 1'000'000;

/// A pedal in virtual time: what is due is reported before later events.
struct Foot {
    void down(std::int64_t at, bool atOnce = true) {
        wait(at);
        keep(pedal.down(at * ms, atOnce));
    }
    void up(std::int64_t at) {
        wait(at);
        keep(pedal.up(at * ms));
    }
    void press(std::int64_t at, bool atOnce = true) {
        down(at, atOnce);
        up(at + 90);
    }
    /// A held key that the window system reports as releases and presses at the same moment.
    void repeat(std::int64_t at) {
        wait(at);
        keep(pedal.up(at * ms));
        pedal.stillDown();
    }
    void wait(std::int64_t until) {
        while (pedal.due() && *pedal.due() < until * ms) {
            const auto before = pedal.due();
            keep(pedal.pass(*before));
            REQUIRE(pedal.due() != before);
        }
    }
    void keep(const PedalPress::Acts& more) { acts.insert(acts.end(), more.begin(), more.end()); }

    PedalPress pedal;
    PedalPress::Acts acts;
};

} // namespace

TEST_CASE("a miss is reported as soon as the pedal goes down, and only once") {
    Foot foot;
    foot.down(1000);
    CHECK(foot.acts == PedalPress::Acts{{Kind::mark, 1000 * ms, false}});
    foot.up(1120);
    foot.wait(5000);
    CHECK(foot.acts.size() == 1);
}

TEST_CASE("a press that can wait is reported once no second one can follow") {
    Foot foot;
    foot.press(1000, false);
    foot.wait(1350);
    CHECK(foot.acts.empty());
    foot.wait(1352);
    CHECK(foot.acts == PedalPress::Acts{{Kind::press, 1000 * ms, false}});
}

TEST_CASE("a held pedal is reported when the hold time is over, not at the release, and its mark is void") {
    Foot foot;
    SUBCASE("while it marks") {
        foot.down(1000);
        foot.wait(1801);
        CHECK(foot.acts == PedalPress::Acts{{Kind::mark, 1000 * ms, false}, {Kind::held, 1000 * ms, true}});
    }
    SUBCASE("while it does not") {
        foot.down(1000, false);
        foot.wait(1801);
        CHECK(foot.acts == PedalPress::Acts{{Kind::held, 1000 * ms, false}});
    }
    const auto reported = foot.acts.size();
    foot.up(4000);
    foot.wait(9000);
    CHECK(foot.acts.size() == reported);
}

TEST_CASE("a release just before the hold is over is a press") {
    Foot foot;
    foot.down(1000, false);
    foot.up(1799);
    foot.wait(3000);
    CHECK(foot.acts == PedalPress::Acts{{Kind::press, 1000 * ms, false}});
}

TEST_CASE(
    "two presses close together are one action, reported with the second; the first one's mark is void") {
    Foot foot;
    foot.press(1000);
    foot.press(1350);
    foot.wait(5000);
    CHECK(foot.acts == PedalPress::Acts{{Kind::mark, 1000 * ms, false}, {Kind::twice, 1350 * ms, true}});
}

TEST_CASE("two presses further apart are two") {
    Foot foot;
    foot.press(1000);
    foot.press(1351);
    foot.wait(5000);
    CHECK(foot.acts == PedalPress::Acts{{Kind::mark, 1000 * ms, false}, {Kind::mark, 1351 * ms, false}});
}

TEST_CASE("after two presses a third one starts again, and holding the second one adds nothing") {
    Foot foot;
    foot.press(1000, false);
    foot.press(1200, false);
    foot.press(1400, false);
    foot.wait(3000);
    CHECK(foot.acts == PedalPress::Acts{{Kind::twice, 1200 * ms, false}, {Kind::press, 1400 * ms, false}});
    foot.acts.clear();
    foot.press(4000);
    foot.down(4200);
    foot.wait(9000);
    CHECK(foot.acts.size() == 2);
}

TEST_CASE("a held pedal reported as releases and presses at one moment is held") {
    Foot foot;
    foot.down(1000);
    for (std::int64_t at = 1500; at < 2500; at += 33) foot.repeat(at);
    foot.up(2600);
    foot.wait(9000);
    CHECK(foot.acts == PedalPress::Acts{{Kind::mark, 1000 * ms, false}, {Kind::held, 1000 * ms, true}});
}

TEST_CASE("a window that comes late reads the same from the moments at which the pedal moved") {
    Foot foot;
    SUBCASE("a hold") {
        foot.keep(foot.pedal.down(1000 * ms, true));
        foot.keep(foot.pedal.up(2000 * ms));
        CHECK(foot.acts.back() == PedalAct{Kind::held, 1000 * ms, true});
    }
    SUBCASE("two presses apart, of which the first waited") {
        foot.keep(foot.pedal.down(1000 * ms, false));
        foot.keep(foot.pedal.up(1100 * ms));
        foot.keep(foot.pedal.down(2000 * ms, true));
        CHECK(foot.acts == PedalPress::Acts{{Kind::press, 1000 * ms, false}, {Kind::mark, 2000 * ms, false}});
    }
}

TEST_CASE("the player's own timing counts") {
    Foot foot;
    foot.pedal.setTiming({500 * ms, 200 * ms, 30 * ms});
    foot.press(1000);
    foot.press(1250);
    foot.down(3000);
    foot.wait(3501);
    CHECK(foot.acts == PedalPress::Acts{{Kind::mark, 1000 * ms, false},
                                        {Kind::mark, 1250 * ms, false},
                                        {Kind::mark, 3000 * ms, false},
                                        {Kind::held, 3000 * ms, true}});
}

TEST_CASE("losing the keyboard cancels whatever was in progress and keeps the timing") {
    Foot foot;
    foot.pedal.setTiming({500 * ms, 200 * ms, 30 * ms});
    foot.down(1000, false);
    foot.pedal.forget();
    CHECK_FALSE(foot.pedal.due());
    foot.down(2000, false);
    CHECK(foot.pedal.due() == 2500 * ms);
}

TEST_CASE("the timing in milliseconds is that in nanoseconds, value by value") {
    const PedalPress::Timing usual;
    const auto timing = piolo::practice::pedalTiming(800, 350, 30);
    CHECK(timing.hold == usual.hold);
    CHECK(timing.twice == usual.twice);
    CHECK(timing.bounce == usual.bounce);
}
