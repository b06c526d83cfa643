// SPDX-License-Identifier: GPL-3.0-or-later
// Everything known of one passage.
#pragma once

#include "core/history/entries.h"
#include "core/passage/group_marks.h"
#include "core/passage/passage.h"
#include "core/passage/picture.h"
#include "core/passage/stage.h"

#include <array>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace piolo {

/// A full streak at or above the target.
struct Secure {
    Date day;
    Tempo tempo = Tempo::bpm(60);
    bool operator==(const Secure&) const = default;
};

/// Everything known of one passage.
struct PassageRecord {
    Passage passage;
    bool removed = false;
    GroupMarks editedHere; ///< edited by hand after they had been imported
    Standing standing;
    std::optional<Tempo> best;                                 ///< the highest tempo with a full streak
    std::array<std::optional<Tempo>, articulationCount> bests; ///< the same, by articulation
    std::optional<Tempo> lastFullStreak;                       ///< the tempo of the newest full streak
    std::optional<Date> lastDay;     ///< local date of the newest run or tempo, retracted ones not counted
    std::vector<Secure> secures;     ///< oldest first; those below a raised target are gone
    Entries entries;                 ///< oldest first
    Stage stage = Stage::slow;       ///< as the player said last
    std::optional<Picture> picture;  ///< of its music
    std::map<Id, std::string> notes; ///< by the entry they are about

    /// Different days with a secure.
    [[nodiscard]] int secureDays() const;
    bool operator==(const PassageRecord&) const = default;
};

} // namespace piolo
