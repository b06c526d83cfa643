// SPDX-License-Identifier: GPL-3.0-or-later
// The grid of scales as the notebook and the player's settings have it, and how a cell becomes a passage.
#pragma once

#include "core/scales/key_order.h"
#include "core/scales/scale_grid.h"
#include "core/scales/scale_passage.h"
#include "core/scales/scale_proposal.h"
#include "core/scales/scale_weeks.h"
#include "practice/log/practice_book.h"

#include <array>
#include <cstdint>
#include <optional>
#include <vector>

namespace piolo::practice {

/// A place in the grid.
struct ScalePlace {
    std::int32_t notesPerBeat = 1;
    int key = 0; ///< pitch class of the written tonic
};

/// Window's thread. The grid is computed when it is read for the first time after forget().
class ScaleFigures {
public:
    /// `book` outlives this.
    explicit ScaleFigures(PracticeBook& book) : book_(book) {}

    /// The notebook changed.
    void forget() { grid_.reset(); }
    [[nodiscard]] const ScaleSettings& settings() const { return book_.notebook().settings().scales; }
    [[nodiscard]] const ScaleCell& at(ScalePlace place) const;
    /// The keys, in the order of the columns.
    [[nodiscard]] std::array<int, keyCount> order() const;
    [[nodiscard]] int columnOf(int key) const;
    [[nodiscard]] Tonic tonic(int key) const;
    /// The cell to play next. Where no key can be played the first one says so.
    [[nodiscard]] CellProposal proposal() const;
    [[nodiscard]] StartProposal start(ScalePlace place) const;
    /// Where a cell that has a passage goes on: its day's opening, or where it stands.
    [[nodiscard]] Tempo goesOnAt(ScalePlace place) const;
    /// 0…1 of the target; 0 without a best.
    [[nodiscard]] double shareOfTarget(ScalePlace place) const;
    [[nodiscard]] std::vector<ScaleWeek> weeks(int count) const;

    [[nodiscard]] Scale scale(ScalePlace place) const;
    /// Its notes; none where the range has no tonic of it.
    [[nodiscard]] std::optional<ScalePart> part(ScalePlace place) const;
    /// It has a passage already, or one can be made.
    [[nodiscard]] bool canDrill(ScalePlace place) const;
    /// The passage of that cell, made when there is none yet; none when that cannot be.
    [[nodiscard]] Id passage(ScalePlace place);

private:
    const ScaleGrid& grid() const;
    Id makePassage(ScalePlace place, const ScalePart& part);
    void bringUpToDate(const PassageRecord& record, const Scale& scale, const ScalePart& part);

    PracticeBook& book_;
    mutable std::optional<ScaleGrid> grid_;
};

} // namespace piolo::practice
