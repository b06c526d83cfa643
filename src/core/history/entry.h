// SPDX-License-Identifier: GPL-3.0-or-later
// One thing that happened to a passage's tempo.
#pragma once

#include "core/base/id.h"
#include "core/facts/reason.h"
#include "core/facts/spot.h"
#include "core/history/run_kind.h"
#include "core/passage/manner.h"
#include "core/rule/mark.h"
#include "core/rule/standing.h"
#include "core/time/timestamp.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string_view>
#include <vector>

namespace piolo {

/// One thing that happened to a passage's tempo, as it counts now (late misses and doubts applied, retracted
/// facts gone).
struct Entry {
    /// The kinds of runs, as in RunKind, and a tempo that was set.
    enum class Kind : std::uint8_t { run, attempt, silent, context, aside, tempo };
    Id id;
    Timestamp at;
    Kind kind = Kind::run;
    Tempo tempo = Tempo::bpm(60); ///< the run's tempo, or the tempo set
    Mark mark = Mark::clean;      ///< of a run of any kind
    Reason reason = Reason::none;
    std::int64_t millis = 0;
    bool late = false;      ///< missed by a late miss
    bool corrected = false; ///< the player gave it another mark afterwards
    bool fullStreak = false;
    Standing before;
    Standing after;
    std::vector<Spot> spots;
    Articulation articulation = Articulation::written; ///< as the passage said then
    Rhythm rhythm = Rhythm::written;
    bool entered = false; ///< ticked on paper, and entered later
    bool operator==(const Entry&) const = default;
};

[[nodiscard]] constexpr Entry::Kind entryKind(RunKind kind) noexcept {
    return static_cast<Entry::Kind>(kind);
}
static_assert(entryKind(RunKind::aside) == Entry::Kind::aside &&
              static_cast<std::size_t>(Entry::Kind::tempo) == runKindTable.size());

/// None: a tempo that was set.
[[nodiscard]] constexpr std::optional<RunKind> runKindOf(Entry::Kind kind) noexcept {
    return kind == Entry::Kind::tempo ? std::nullopt : std::optional(static_cast<RunKind>(kind));
}

/// "run", "try" … as nameOf(RunKind) has it, or "tempo".
[[nodiscard]] constexpr std::string_view nameOf(Entry::Kind kind) noexcept {
    return kind == Entry::Kind::tempo ? "tempo" : nameOf(static_cast<RunKind>(kind));
}

} // namespace piolo
