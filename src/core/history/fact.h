// SPDX-License-Identifier: GPL-3.0-or-later
// What happened, one fact at a time. The journal stores facts; everything else is computed from them.
#pragma once

#include "core/history/run_kind.h"
#include "core/passage/passage.h"

#include <cstdint>
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace piolo {

/// Where in the part a miss was marked: the part's own bar number (a pick-up is firstBar - 1), the beat
/// from 1, and how much of that beat had gone by.
struct Spot {
    std::int32_t bar = 0;
    std::int32_t beat = 0;
    std::int32_t part = 0; ///< thousandths of the beat, 0…999
    bool operator==(const Spot&) const = default;
};

/// Why a run was void, or why a tempo was set.
enum class Reason : std::uint8_t {
    none,
    hand,
    stopped,
    tempoChanged,
    soundLost,
    newDay,
    offer,
    named ///< the tempo that the player thinks they can play: a search for the tempo begins
};

/// One run that was played.
struct RunFact {
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

/// A run that ended clean was missed after all, at its own place. Taking this back makes it clean again.
struct LateMissFact {
    Id passage;
    Id run;
    bool operator==(const LateMissFact&) const = default;
};
/// Runs that nobody listened to are void after all (the player's "no" after a long stretch without a key).
struct DoubtFact {
    Id passage;
    std::vector<Id> runs;
    bool operator==(const DoubtFact&) const = default;
};
/// A tempo set by hand, or by a new day.
struct TempoFact {
    Id passage;
    Tempo tempo = Tempo::bpm(60);
    Reason reason = Reason::hand;
    bool operator==(const TempoFact&) const = default;
};
/// Retracts the fact named: a run, a late miss, a doubt, a tempo, an edit, a stage or a note of the same
/// passage, or a run-through of a piece. It has no effect on another back.
struct BackFact {
    Id passage; ///< or the piece of the run-through
    Id retracts;
    bool operator==(const BackFact&) const = default;
};
/// A passage was made or edited: only the groups that changed.
struct PassageFact {
    Id passage;
    std::optional<Title> title;
    std::optional<Music> music;
    std::optional<Tempi> tempi;
    std::optional<ClickPattern> click{};
    std::optional<Manner> manner{};
    std::optional<std::vector<Note>> notes{};
    std::optional<Scale> scale{}; ///< once a passage is a scale it stays one
    bool imported = false;        ///< taken from a passage file, not edited by hand
    bool operator==(const PassageFact&) const = default;
};
/// A piece was made or edited: only what changed. `due` holds nothing inside to take the date away.
struct PieceFact {
    Id piece;
    std::optional<std::string> name;
    std::optional<std::string> instrument;
    std::optional<std::optional<Date>> due;
    std::optional<std::string> composer{};
    std::optional<std::int32_t> transposition{};
    std::optional<std::int32_t> bars{};
    std::optional<PieceMusic> music{};
    std::optional<std::string> notes{};
    bool operator==(const PieceFact&) const = default;
};
/// A passage or a piece was removed, or restored.
struct RemovalFact {
    Id subject;
    bool removed = true;
    bool operator==(const RemovalFact&) const = default;
};
/// Practice settings, whole.
struct SettingsFact {
    PracticeSettings settings;
    bool operator==(const SettingsFact&) const = default;
};

/// The player says which stage a passage is in.
struct StageFact {
    Id passage;
    Stage stage = Stage::slow;
    bool operator==(const StageFact&) const = default;
};
/// The player's words about a run or tempo of that passage; the newest hold, empty ones take them away.
struct NoteFact {
    static constexpr std::size_t longest = 500; ///< bytes of UTF-8

    Id passage;
    Id about;
    std::string text;
    bool operator==(const NoteFact&) const = default;
};
/// Where a run-through of a piece came to a stop.
struct Stop {
    std::int32_t bar = 1;    ///< 0: not known, up to Piece::mostBars
    std::int64_t millis = 0; ///< from the start
    bool operator==(const Stop&) const = default;
};
/// A whole piece was played from start to finish, or given up.
struct RunThroughFact {
    static constexpr std::size_t mostStops = 999;

    Id piece;
    std::optional<Tempo> tempo; ///< of the click; none: without it
    std::int64_t millis = 0;
    bool finished = true;
    std::vector<Stop> stops; ///< in the order in which they were made
    bool operator==(const RunThroughFact&) const = default;
};

/// The same speed is felt in another beat: tempo, start, target, floor and steps are converted, the streak
/// goes on. It has no effect where that cannot be done exactly (core/felt_beat.h).
struct FeltBeatFact {
    Id passage;
    BeatUnit beat = BeatUnit::quarter;
    bool operator==(const FeltBeatFact&) const = default;
};
/// The picture of the passage's music; none: it has none any more.
struct PictureFact {
    Id passage;
    std::optional<Picture> picture;
    bool operator==(const PictureFact&) const = default;
};

using FactBody =
    std::variant<RunFact, LateMissFact, DoubtFact, TempoFact, BackFact, PassageFact, PieceFact, RemovalFact,
                 SettingsFact, StageFact, NoteFact, RunThroughFact, FeltBeatFact, PictureFact>;

/// A fact and where it stands. The notebook sorts by order, device, seq.
struct Fact {
    Id id;
    std::string device;
    std::uint64_t seq = 0;
    std::int64_t order = 0;
    Timestamp at;
    FactBody body;
    bool operator==(const Fact&) const = default;
};

/// True when `a` stands before `b`: by order, device, seq, then id.
[[nodiscard]] bool standsBefore(const Fact& a, const Fact& b) noexcept;
/// The passage a fact is about; none for pieces, settings and removals.
[[nodiscard]] Id passageOf(const FactBody& body) noexcept;

} // namespace piolo
