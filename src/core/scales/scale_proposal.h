// SPDX-License-Identifier: GPL-3.0-or-later
// Which scale to practise next, at what tempo, and why.
#pragma once

#include "core/scales/scale_grid.h"

#include <cstdint>
#include <optional>
#include <span>

namespace piolo {

/// The tempo for a scale that was never played, and how it was chosen.
struct StartProposal {
    enum class From : std::uint8_t {
        nothing,    ///< no neighbour was played: slow enough for anyone
        fewerNotes, ///< the same key with fewer notes per beat
        nextKey     ///< a key a fourth or a fifth away, which shares all notes but one
    };
    Tempo start = Tempo::bpm(60);
    Tempo target = Tempo::bpm(120);
    From from = From::nothing;
    std::int32_t notesPerBeat = 1;      ///< of the neighbour
    int key = 0;                        ///< of the neighbour
    std::optional<Tempo> neighbourBest; ///< the start is two notches below it
};

/// Two notches below the lower of these: the best in that key with the nearest smaller number of notes per
/// beat, and the lower best of the keys a fourth and a fifth away in that subdivision. But not below the
/// tempo that is slow enough for anyone, unless that best is: otherwise each key would begin below the
/// previous one. Without a neighbour, that tempo: at most 240 notes per minute and at most 60 BPM. The target
/// is the usual one for that number of notes per beat, or the start if that is higher.
[[nodiscard]] StartProposal startFor(const ScaleGrid& grid, std::int32_t notesPerBeat, int key);

struct CellProposal {
    enum class Why : std::uint8_t {
        first,    ///< nothing was played yet
        longest,  ///< it was played the longest ago, and at least a week ago
        unplayed, ///< it was never played, but others were
        slowest   ///< its best is the lowest in its row
    };
    std::int32_t notesPerBeat = 1;
    int key = 0;
    Why why = Why::first;
    std::int64_t days = 0; ///< since it was last played; for `longest`
};

/// After this many days, a scale comes back before a new one is begun.
inline constexpr std::int64_t staleDays = 7;

/// The next cell among those not played today: the one played longest ago, if that is at least a week;
/// otherwise the first one never played, row by row in the order of the keys; otherwise the one whose best is
/// furthest below the best of its row. If every cell was played today, the last criterion applies to all.
/// `keys`: those that can be played, in order; at least one.
[[nodiscard]] CellProposal nextCell(const ScaleGrid& grid, std::span<const int> keys, Date today);

} // namespace piolo
