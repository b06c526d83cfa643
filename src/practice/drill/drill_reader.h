// SPDX-License-Identifier: GPL-3.0-or-later
// Reads the engine's events, journals what they mean, and passes them on.
#pragma once

#include "engine/drill/drill_engine.h"
#include "practice/drill/drill_note.h"
#include "practice/log/practice_book.h"
#include "practice/ports/sound_port.h"

#include <cstdint>
#include <functional>
#include <mutex>
#include <optional>
#include <unordered_map>
#include <vector>

namespace piolo::practice {

/// What the engine's events do not say: which passage is drilled, and what for.
struct DrilledPassage {
    Id passage;
    std::int32_t firstBar = 1; ///< the part's own number of the run's first whole bar
    RunKind kind = RunKind::run;
};

/// poll() belongs to the reader's thread, expect() and forget() to the sender's.
/// Runs are written by the reader itself, so a stalled window delays no fact.
class DrillReader {
public:
    /// `deliver` is called on the reader's thread for every event, pulses too, in the engine's order.
    DrillReader(PracticeBook& book, SoundPort& sound, engine::DrillEngine& engine,
                std::function<void(DrillNote)> deliver);

    /// Before a start is sent: the next `started` speaks of this passage.
    void expect(const DrilledPassage& drilled);
    /// The start that was expected last could not be sent.
    void forget();
    /// Takes all events that there are. Does not wait for the disk.
    void poll();

private:
    void take(DrillNote note);
    void begin();
    std::optional<Fact> journal(const DrillNote& note);
    std::optional<Fact> journalRun(const DrillNote& note);
    std::optional<Fact> journalLateMiss(const engine::Event& event);
    [[nodiscard]] Spot spotOf(const engine::Event& event) const;

    PracticeBook& book_;
    SoundPort& sound_;
    engine::DrillEngine& engine_;
    std::function<void(DrillNote)> deliver_;
    std::mutex mutex_; // guards expected_
    std::vector<DrilledPassage> expected_;
    // The reader's own.
    DrilledPassage present_;
    std::int64_t runBeganNanos_ = 0;
    std::vector<Spot> spots_;
    std::unordered_map<std::uint64_t, Id> facts_; // of the runs of this start, by the engine's number
};

} // namespace piolo::practice
