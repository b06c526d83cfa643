// SPDX-License-Identifier: GPL-3.0-or-later
// The scale: Oxford Dictionary of Music for its range of 40 to 208; the 39 values by octaves, and the reason
// (nearly constant steps in per cent), in the archive of the horn list
// (mail-archive.com/horn@music.memphis.edu, msg29183 and msg29184).
#include "core/rule/rule.h"
#include "core/time/metronome_scale.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

using namespace piolo;

TEST_CASE("the scale has 39 values, from 40 by twos, threes, fours, sixes and eights to 208") {
    struct Stretch {
        int to;
        int step;
    };
    std::vector<int> expected{40};
    for (const Stretch& stretch :
         {Stretch{60, 2}, Stretch{72, 3}, Stretch{120, 4}, Stretch{144, 6}, Stretch{208, 8}})
        while (expected.back() < stretch.to) expected.push_back(expected.back() + stretch.step);
    CHECK(std::vector<int>(metronomeScale.begin(), metronomeScale.end()) == expected);
    CHECK(metronomeScale.size() == 39);
}

TEST_CASE("the steps of the scale are between 3.448 and 5.556 per cent, 4.434 on average") {
    // Computed from the values.
    double least = 1;
    double most = 0;
    for (std::size_t mark = 1; mark < metronomeScale.size(); ++mark) {
        const double step = static_cast<double>(metronomeScale[mark]) / metronomeScale[mark - 1] - 1;
        least = std::min(least, step);
        most = std::max(most, step);
    }
    CHECK(least * 100 == doctest::Approx(3.448).epsilon(0.0002));
    CHECK(most * 100 == doctest::Approx(5.556).epsilon(0.0002));
    CHECK((std::pow(208.0 / 40.0, 1.0 / 38.0) - 1) * 100 == doctest::Approx(4.434).epsilon(0.0002));
}

TEST_CASE("a notch goes to the next value strictly above or below: from 61 to 63 or 60") {
    CHECK(notchAbove(Tempo::bpm(61)) == Tempo::bpm(63));
    CHECK(notchBelow(Tempo::bpm(61)) == Tempo::bpm(60));
    CHECK(notchAbove(Tempo::bpm(60)) == Tempo::bpm(63));
    CHECK(notchBelow(Tempo::bpm(63)) == Tempo::bpm(60));
    CHECK(notchAbove(*Tempo::fromThousandths(62'999)) == Tempo::bpm(63));
    CHECK(notchBelow(*Tempo::fromThousandths(60'001)) == Tempo::bpm(60));
}

TEST_CASE("below 40 the notches are 2 apart, above 208 they are 8 apart") {
    struct Row {
        std::int32_t from;
        std::int32_t below;
        std::int32_t above;
    };
    for (const Row& row :
         {Row{40'000, 38'000, 42'000}, Row{39'000, 38'000, 40'000}, Row{38'500, 38'000, 40'000},
          Row{38'000, 36'000, 40'000}, Row{41'000, 40'000, 42'000}, Row{208'000, 200'000, 216'000},
          Row{209'000, 208'000, 216'000}, Row{216'000, 208'000, 224'000}, Row{399'000, 392'000, 400'000}}) {
        CAPTURE(row.from);
        CHECK(notchBelow(*Tempo::fromThousandths(row.from)).thousandths() == row.below);
        CHECK(notchAbove(*Tempo::fromThousandths(row.from)).thousandths() == row.above);
    }
}

TEST_CASE("there is no notch beyond 10 and 400 BPM") {
    CHECK(notchBelow(Tempo::bpm(12)) == Tempo::bpm(10));
    CHECK(notchBelow(Tempo::bpm(11)) == Tempo::bpm(10));
    CHECK(notchBelow(Tempo::bpm(10)) == Tempo::bpm(10));
    CHECK(notchAbove(Tempo::bpm(400)) == Tempo::bpm(400));
}

TEST_CASE("from any tempo a notch up and a notch down are neighbours on the scale") {
    int wrong = 0;
    for (std::int32_t at = Tempo::least + 1; at < Tempo::most; ++at) {
        const Tempo from = *Tempo::fromThousandths(at);
        const Tempo above = notchAbove(from);
        const Tempo below = notchBelow(from);
        const bool between = below < from && from < above;
        const bool same = notchAbove(below) == above || notchAbove(below) == from;
        wrong += between && same ? 0 : 1;
    }
    CHECK(wrong == 0);
}
