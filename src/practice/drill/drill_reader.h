// SPDX-License-Identifier: GPL-3.0-or-later
// Reads the engine's events, records their meaning in the journal, and passes them on.
#pragma once

#include "engine/drill/drill_engine.h"
#include "practice/drill/drill_note.h"
#include "practice/log/practice_book.h"
#include "practice/ports/sound_port.h"

#include <cstdint>
#include <functional>
#include <map>
#include <mutex>
#include <optional>
#include <vector>

namespace piolo::practice {

/// What the engine's events do not contain: the passage, and the purpose of its runs.
struct DrilledPassage {
    Id passage;
    std::int32_t firstBar = 1; ///< the part's own number of the run's first full bar
    RunKind kind = RunKind::run;
};

/// A run that was recorded.
struct JournalledRun {
    Id passage;
    Id fact;
};

/// poll() is for the reader thread, expect() and forget() for the sender's. The reader writes runs itself, so
/// a blocked window delays no fact.
class DrillReader {
public:
    /// `deliver` is called on the reader thread for every event, including pulses, in the engine's order.
    DrillReader(PracticeBook& book, SoundPort& sound, engine::DrillEngine& engine,
                std::function<void(DrillNote)> deliver);

    /// Call before sending a start: the next `started` event refers to this passage.
    void expect(const DrilledPassage& drilled);
    /// The most recently expected start could not be sent.
    void forget();
    /// Reads all available events; true if there was any. Does not wait for the disk.
    bool poll();
    /// Reader thread. True from the beginning of a drill, a playback or a click to its end, as far as read.
    [[nodiscard]] bool sounding() const { return drill_ || playback_ || click_; }

private:
    void take(DrillNote note);
    void begin();
    void noteSounding(engine::Event::Kind kind);
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
    // Used only by the reader thread.
    bool drill_ = false;
    bool playback_ = false;
    bool click_ = false;
    DrilledPassage present_;
    std::int64_t runBeganNanos_ = 0;
    std::vector<Spot> spots_;
    std::map<std::uint64_t, JournalledRun> runs_; // the newest ones, by the engine's run number
};

} // namespace piolo::practice
