// SPDX-License-Identifier: GPL-3.0-or-later
// The tempi of a passage and the rule that moves between them.
#pragma once

#include "core/base/fields.h"
#include "core/rule/rule.h"

namespace piolo {

/// Where the passage begins and what moves it. floor <= start <= target.
struct Tempi {
    Tempo start = Tempo::bpm(60);
    Rule rule;
    bool operator==(const Tempi&) const = default;
};

template <typename Fields>
void describe(Fields& in, Tempi& tempi) {
    Rule& rule = tempi.rule;
    in.field("start", tempi.start);
    in.field("target", rule.target);
    in.field("floor", rule.floor);
    in.field("step", rule.step);
    in.field("drop", rule.drop, Range{1, Rule::mostSteps});
    in.field("climb", rule.climb, Range{1, Rule::mostSteps});
    in.field("cleanRuns", rule.cleanRuns, Range{1, Rule::mostSteps});
    unlessUsual(in, "gentle", rule.gentle, false);
    in.check(tempi.start <= rule.target, "start");
    in.check(rule.floor <= tempi.start, "floor");
}

} // namespace piolo
