// SPDX-License-Identifier: GPL-3.0-or-later
// A run.
#pragma once

#include "core/base/fields.h"
#include "core/base/id.h"
#include "core/facts/fact_role.h"
#include "core/facts/reason.h"
#include "core/facts/spot.h"
#include "core/history/run_kind.h"
#include "core/rule/mark.h"
#include "core/time/tempo.h"

#include <cstdint>
#include <string_view>
#include <vector>

namespace piolo {

/// One run that was played.
struct RunFact {
    static constexpr std::string_view kindName = "run";
    static constexpr FactRole role = FactRole::plays;

    Id passage;
    Tempo tempo = Tempo::bpm(60);
    Mark mark = Mark::clean;
    Reason reason = Reason::none; ///< for a void run
    RunKind kind = RunKind::run;
    std::int64_t millis = 0; ///< from the first note to the end
    std::vector<Spot> spots; ///< where misses were marked
    bool entered = false;    ///< ticked on paper, and entered later
    bool operator==(const RunFact&) const = default;
};

/// A try has a key of its own: it is older than the other kinds.
template <typename Fields>
void describeKind(Fields& in, RunKind& kind) {
    bool isTry = kind == RunKind::attempt;
    RunKind other = isTry ? RunKind::run : kind;
    unlessUsual(in, "try", isTry, false);
    unlessUsual(in, "as", other, RunKind::run);
    in.check(!isTry || other == RunKind::run, "as");
    kind = isTry ? RunKind::attempt : other;
}

template <typename Fields>
void describe(Fields& in, RunFact& fact) {
    in.field("passage", fact.passage);
    in.field("tempo", fact.tempo);
    in.field("mark", fact.mark);
    unlessUsual(in, "reason", fact.reason, Reason::none);
    describeKind(in, fact.kind);
    in.field("ms", fact.millis, playingMillis);
    unlessUsual(in, "spots", fact.spots, {});
    unlessUsual(in, "entered", fact.entered, false);
}

} // namespace piolo
