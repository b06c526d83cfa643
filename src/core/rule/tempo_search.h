// SPDX-License-Identifier: GPL-3.0-or-later
// The search for the tempo: the player names one, each miss drops, the first full streak has found it.
#pragma once

#include "core/history/notebook.h"

#include <optional>
#include <vector>

namespace piolo {

struct TempoSearch {
    Id begun; ///< the fact that named the tempo
    Date day;
    Tempo named = Tempo::bpm(60);
    std::optional<Tempo> found; ///< of the first full streak
    bool over = false;          ///< found, or given up: another tempo was set, or a new day began
};

/// The newest search of that day, by the day's own entries: a search never outlives its day.
[[nodiscard]] std::optional<TempoSearch> searchOn(const PassageRecord& record, Date day);
/// All searches in a passage, oldest first; only the last can be going on.
[[nodiscard]] std::vector<TempoSearch> searchesIn(const PassageRecord& record);

} // namespace piolo
