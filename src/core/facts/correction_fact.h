// SPDX-License-Identifier: GPL-3.0-or-later
// What the player says afterwards about something that was played.
#pragma once

#include "core/base/fields.h"
#include "core/base/id.h"
#include "core/facts/fact_role.h"
#include "core/rule/mark.h"

#include <optional>
#include <string_view>

namespace piolo {

/// The fact named counts from here on, also if it was taken back; if it is a run, with this mark. It has no
/// effect on a back or on another correction.
struct CorrectionFact {
    static constexpr std::string_view kindName = "correction";
    static constexpr FactRole role = FactRole::corrects;

    Id passage; ///< or the piece of the run-through
    Id corrects;
    std::optional<Mark> mark; ///< none: the mark that it had
    bool operator==(const CorrectionFact&) const = default;
};

template <typename Fields>
void describe(Fields& in, CorrectionFact& fact) {
    in.field("passage", fact.passage);
    in.field("corrects", fact.corrects);
    ifKnown(in, "mark", fact.mark);
}

} // namespace piolo
