// SPDX-License-Identifier: GPL-3.0-or-later
// What to practise next among scales, at what tempo, and why.
#pragma once

#include "core/scales/scale_grid.h"

#include <cstdint>
#include <optional>
#include <span>

namespace piolo {

/// A tempo for a scale that was never played, and where it comes from.
struct StartProposal {
    enum class From : std::uint8_t {
        nothing,    ///< no neighbour was played: slow enough for anyone
        fewerNotes, ///< the same key with fewer notes to the beat
        nextKey     ///< a key a fourth or a fifth away, which shares all notes but one
    };
    Tempo start = Tempo::bpm(60);
    Tempo target = Tempo::bpm(120);
    From from = From::nothing;
    std::int32_t notesPerBeat = 1;      ///< of the neighbour
    int key = 0;                        ///< of the neighbour
    std::optional<Tempo> neighbourBest; ///< from which it is two notches down
};

/// Two notches below the lower of: the best of the nearest subdivision with fewer notes in that key, and the
/// lower best of the keys a fourth and a fifth away in that subdivision; but not slower than is slow enough
/// for anyone, unless that best is: else each key would begin below the one before it. With no neighbour, as
/// slow as that: at most 240 notes a minute and not over 60. The target is what a beat with that many notes
/// is usually taken to, or the start where that is higher.
[[nodiscard]] StartProposal startFor(const ScaleGrid& grid, std::int32_t notesPerBeat, int key);

struct CellProposal {
    enum class Why : std::uint8_t {
        first,    ///< nothing was played yet
        longest,  ///< played the longest ago, and a week or more
        unplayed, ///< never played, and others were
        slowest   ///< its best is the lowest of its row
    };
    std::int32_t notesPerBeat = 1;
    int key = 0;
    Why why = Why::first;
    std::int64_t days = 0; ///< since it was played; for `longest`
};

/// After so many days a scale comes back before a new one is begun.
inline constexpr std::int64_t staleDays = 7;

/// The next cell: of those not played today the one played longest ago when that is a week or more; else the
/// first, row by row in the order of the keys, that was never played; else the one whose best lies furthest
/// below the best of its row. When every cell was played today, that one of them all. `keys`: those that can
/// be played, in their order; at least one.
[[nodiscard]] CellProposal nextCell(const ScaleGrid& grid, std::span<const int> keys, Date today);

} // namespace piolo
