// SPDX-License-Identifier: GPL-3.0-or-later
// A drill in virtual time: the session and the control of the window on a real practice log, with a player by
// script instead of hands and loudspeaker.
#pragma once

#include "core/base/result.h"
#include "core/passage/passage.h"
#include "core/time/timestamp.h"
#include "journal/folder/journal.h"
#include "practice/virtual/scripted_player.h"

#include <cstdint>
#include <string>
#include <vector>

namespace piolo::practice {

/// A run as the engine reported it.
struct DrilledRun {
    std::uint64_t number = 0;
    Id fact; ///< in the practice log
    Tempo tempo = Tempo::bpm(60);
    Mark mark = Mark::clean;
    bool late = false;
    Standing after;
};

struct VirtualDrillResult {
    std::vector<DrilledRun> runs;
    Standing standing;        ///< the engine's, at the end
    Standing notebook;        ///< the open notebook's, at the end
    bool saved = false;       ///< every fact was on disk at the end
    std::vector<float> sound; ///< all that was rendered
};

inline constexpr std::int32_t virtualRate = 48'000;

/// Opens the folder as `place` has it at `start` of the wall clock, opens the passage's day, and plays the
/// script. The passage is an id or an exact title. Faults: those of opening; noSuchPassage.
Result<VirtualDrillResult> drillVirtually(const journal::JournalLocation& place, const std::string& passage,
                                          const std::string& script, Timestamp start);

} // namespace piolo::practice
