// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rule/settle.h"

#include <cmath>
#include <limits>

namespace piolo {

double settlesAt(const Rule& rule) noexcept { return settlesAt(rule.drop, rule.climb, rule.cleanRuns); }

double settlesAt(double drop, double climb, int cleanRuns) noexcept {
    return std::pow(drop / (drop + climb), 1.0 / cleanRuns);
}

double expectedRunsToClimb(double p, int cleanRuns) noexcept {
    if (p <= 0) return std::numeric_limits<double>::infinity();
    // The quotient expanded to 1/p + 1/p² + … + 1/pⁿ: the same value, and exact at p = 1.
    double runs = 0;
    double term = 1;
    for (int run = 0; run < cleanRuns; ++run) {
        term /= p;
        runs += term;
    }
    return runs;
}

} // namespace piolo
