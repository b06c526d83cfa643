// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rule/settle.h"

#include "../seed.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <iostream>
#include <limits>

using namespace piolo;

TEST_CASE("with equal steps a rule settles at 0.5^(1/n)") {
    // Levitt 1971, "Transformed up-down methods in psychoacoustics", JASA 49(2):467-477, describes the
    // method; the values are computed with its formula.
    struct Row {
        int cleanRuns;
        double percent;
    };
    for (const Row& row : {Row{1, 50.000}, Row{2, 70.711}, Row{3, 79.370}, Row{4, 84.090}, Row{5, 87.055},
                           Row{6, 89.090}, Row{7, 90.572}, Row{8, 91.700}, Row{10, 93.303}}) {
        CAPTURE(row.cleanRuns);
        CHECK(std::abs(100 * settlesAt(2, 2, row.cleanRuns) - row.percent) < 0.0006);
    }
}

TEST_CASE("the published asymptotes of unequal steps are matched to 0.005 points") {
    // García-Pérez 1998, "Forced-choice staircases with fixed step sizes: asymptotic and small-sample
    // properties", Vision Research 38(12):1861-1881, abstract. Its ratio is climb to drop in our terms.
    struct Row {
        int cleanRuns;
        double ratio;
        double percent;
    };
    for (const Row& row :
         {Row{1, 0.2845, 77.85}, Row{2, 0.5488, 80.35}, Row{3, 0.7393, 83.15}, Row{4, 0.8415, 85.84}}) {
        CAPTURE(row.cleanRuns);
        CHECK(std::abs(100 * settlesAt(1, row.ratio, row.cleanRuns) - row.percent) <= 0.005);
    }
}

TEST_CASE("with one clean run the balance is that of the weighted up-down rule") {
    // Kaernbach 1991, Percept. Psychophys. 49(3):227-229: drop : climb = p : (1 - p).
    for (const double p : {0.25, 0.5, 0.75, 0.9}) CHECK(settlesAt(p, 1 - p, 1) == doctest::Approx(p));
}

TEST_CASE("the settings that can be chosen settle where the formula says") {
    // Computed from p* = (drop/(drop + climb))^(1/n).
    struct Row {
        int cleanRuns, drop, climb;
        double percent;
    };
    for (const Row& row :
         {Row{1, 2, 2, 50.00},  Row{1, 4, 2, 66.67},  Row{1, 2, 4, 33.33},  Row{1, 4, 1, 80.00},
          Row{3, 4, 4, 79.37},  Row{3, 2, 1, 87.36},  Row{3, 2, 4, 69.34},  Row{3, 4, 1, 92.83},
          Row{5, 2, 2, 87.06},  Row{5, 4, 2, 92.21},  Row{5, 2, 4, 80.27},  Row{5, 4, 1, 95.64},
          Row{8, 2, 2, 91.70},  Row{8, 4, 2, 95.06},  Row{8, 2, 4, 87.17},  Row{8, 4, 1, 97.25},
          Row{10, 2, 2, 93.30}, Row{10, 4, 2, 96.03}, Row{10, 2, 4, 89.60}, Row{10, 4, 1, 97.79}}) {
        CAPTURE(row.cleanRuns);
        CAPTURE(row.percent);
        Rule rule;
        rule.cleanRuns = row.cleanRuns;
        rule.drop = row.drop;
        rule.climb = row.climb;
        CHECK(std::abs(100 * settlesAt(rule) - row.percent) < 0.0051);
    }
}

TEST_CASE("the runs until a streak are those of run theory") {
    // (1 - p^n)/((1 - p)·p^n), computed; at p = 0.5 exactly 2^(n+1) - 2.
    struct Row {
        double p;
        int cleanRuns;
        double runs;
    };
    for (const Row& row :
         {Row{0.7, 3, 6.385}, Row{0.7, 5, 16.500}, Row{0.7, 8, 54.489}, Row{0.7, 10, 114.671},
          Row{0.8, 3, 4.766}, Row{0.8, 5, 10.259}, Row{0.8, 8, 24.802}, Row{0.8, 10, 41.566},
          Row{0.87055, 5, 7.725}, Row{0.9, 3, 3.717}, Row{0.9, 5, 6.935}, Row{0.9, 10, 18.680},
          Row{0.95, 5, 5.847}, Row{0.95, 8, 10.147}}) {
        CAPTURE(row.p);
        CAPTURE(row.cleanRuns);
        CHECK(std::abs(expectedRunsToClimb(row.p, row.cleanRuns) - row.runs) < 0.0006);
    }
    for (int n = 1; n <= 10; ++n) CHECK(expectedRunsToClimb(0.5, n) == std::pow(2.0, n + 1) - 2);
    CHECK(expectedRunsToClimb(1, 5) == 5);
    CHECK(expectedRunsToClimb(0, 5) == std::numeric_limits<double>::infinity());
}

namespace {

/// A player whose runs at `tempo` are clean with probability 1/(1 + exp((tempo - 100)/8)).
double chanceOfClean(Tempo tempo) { return 1 / (1 + std::exp((tempo.thousandths() / 1000.0 - 100) / 8)); }

struct Settled {
    double meanBpm = 0;
    double cleanShare = 0;
};

Settled playAMillionRuns(const Rule& rule, testing::Dice& dice) {
    constexpr int runs = 1'000'000;
    Standing standing{Tempo::bpm(100), 0};
    std::int64_t sum = 0;
    int clean = 0;
    for (int run = 0; run < runs; ++run) {
        sum += standing.tempo.thousandths();
        const double thrown = static_cast<double>(dice() >> 11U) * 0x1p-53;
        const Mark mark = thrown < chanceOfClean(standing.tempo) ? Mark::clean : Mark::missed;
        clean += mark == Mark::clean ? 1 : 0;
        standing = afterRun(standing, standing.tempo, mark, rule).after;
    }
    return {static_cast<double>(sum) / runs / 1000, static_cast<double>(clean) / runs};
}

} // namespace

TEST_CASE("a million runs of a simulated player settle where the exact chain says") {
    // The stationary mean of the exact Markov chain of this player with this rule, computed without random
    // numbers; also the share of clean runs.
    struct Row {
        int cleanRuns, drop, climb;
        double meanBpm, cleanShare;
    };
    std::cout << "PIOLO_SEED=" << testing::seed() << '\n';
    testing::Dice dice(testing::seed());
    for (const Row& row :
         {Row{5, 2, 2, 84.23, 0.8697}, Row{5, 4, 2, 79.16, 0.9218}, Row{5, 2, 4, 88.32, 0.7991},
          Row{5, 4, 4, 83.69, 0.8689}, Row{5, 2, 1, 79.70, 0.9220}, Row{3, 2, 2, 88.79, 0.7926}}) {
        CAPTURE(testing::seed());
        CAPTURE(row.meanBpm);
        Rule rule;
        rule.cleanRuns = row.cleanRuns;
        rule.drop = row.drop;
        rule.climb = row.climb;
        rule.target = Tempo::bpm(208);
        const Settled settled = playAMillionRuns(rule, dice);
        CHECK(std::abs(settled.meanBpm - row.meanBpm) < 0.3);
        CHECK(std::abs(settled.cleanShare - row.cleanShare) < 0.005);
        CHECK(std::abs(settled.cleanShare - settlesAt(rule)) < 0.01);
    }
}
