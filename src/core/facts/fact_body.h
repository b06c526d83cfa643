// SPDX-License-Identifier: GPL-3.0-or-later
// The kinds of facts: the one list of them. Each kind is a type with its name (`kindName`), its part in the
// fold
// (`role`) and its keys (describe()).
#pragma once

#include "core/facts/back_fact.h"
#include "core/facts/clock_fact.h"
#include "core/facts/correction_fact.h"
#include "core/facts/doubt_fact.h"
#include "core/facts/felt_beat_fact.h"
#include "core/facts/late_miss_fact.h"
#include "core/facts/note_fact.h"
#include "core/facts/passage_groups.h"
#include "core/facts/picture_fact.h"
#include "core/facts/piece_members.h"
#include "core/facts/removal_fact.h"
#include "core/facts/run_fact.h"
#include "core/facts/run_through_fact.h"
#include "core/facts/settings_fact.h"
#include "core/facts/stage_fact.h"
#include "core/facts/tempo_fact.h"

#include <cstddef>
#include <optional>
#include <string_view>
#include <variant>

namespace piolo {

using FactBody = std::variant<RunFact, LateMissFact, DoubtFact, TempoFact, BackFact, PassageFact, PieceFact,
                              RemovalFact, SettingsFact, StageFact, NoteFact, RunThroughFact, FeltBeatFact,
                              PictureFact, CorrectionFact, ClockFact>;
inline constexpr std::size_t kindCount = std::variant_size_v<FactBody>;

/// A kind that belongs to a passage.
template <typename Kind>
concept OfAPassage = Kind::role != FactRole::elsewhere;
template <typename Kind>
concept NotOfAPassage = !OfAPassage<Kind>;

/// The name of a body's kind in the journal: "run", "late", …
[[nodiscard]] std::string_view kindOf(const FactBody& body) noexcept;
[[nodiscard]] FactRole roleOf(const FactBody& body) noexcept;
/// An empty body of the kind of that name; nothing when there is no such kind.
[[nodiscard]] std::optional<FactBody> bodyOfKind(std::string_view name);
/// The passage that a fact is about; none for kinds that are not of a passage.
[[nodiscard]] Id passageOf(const FactBody& body) noexcept;

/// A function for each kind, as one: std::visit does not compile when a kind has none.
template <typename... Functions>
struct ForKinds : Functions... {
    using Functions::operator()...;
};
template <typename... Functions>
ForKinds(Functions...) -> ForKinds<Functions...>;

} // namespace piolo
