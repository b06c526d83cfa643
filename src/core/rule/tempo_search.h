// SPDX-License-Identifier: GPL-3.0-or-later
// The search for the tempo: the player names a tempo, each miss lowers it, and the first full streak has
// found it.
#pragma once

#include "core/history/notebook.h"

#include <optional>
#include <vector>

namespace piolo {

struct TempoSearch {
    Id begun; ///< the fact that named the tempo
    Date day;
    Tempo named = Tempo::bpm(60);
    std::optional<Tempo> found; ///< the tempo of the first full streak
    bool over = false;          ///< found, or abandoned because another tempo was set or a new day began
};

/// The newest search on that day, from the day's own entries: a search never extends beyond its day.
[[nodiscard]] std::optional<TempoSearch> searchOn(const PassageRecord& record, Date day);
/// All searches of a passage, oldest first; only the last may be in progress.
[[nodiscard]] std::vector<TempoSearch> searchesIn(const PassageRecord& record);

} // namespace piolo
