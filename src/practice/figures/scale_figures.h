// SPDX-License-Identifier: GPL-3.0-or-later
// The grid of scales from the notebook and the player's settings, and how a cell becomes a passage.
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

/// A cell of the grid.
struct CellAddress {
    std::int32_t notesPerBeat = 1;
    int key = 0; ///< pitch class of the written tonic
};

/// Window thread. The grid is computed when it is first read after forget().
class ScaleFigures {
public:
    /// `book` must outlive this object.
    explicit ScaleFigures(PracticeBook& book) : book_(book) {}

    /// The notebook has changed.
    void forget() { grid_.reset(); }
    [[nodiscard]] const ScaleSettings& settings() const { return book_.notebook().settings().scales; }
    [[nodiscard]] const ScaleCell& at(CellAddress address) const;
    /// The keys in the order of the columns.
    [[nodiscard]] std::array<int, keyCount> order() const;
    [[nodiscard]] int columnOf(int key) const;
    [[nodiscard]] Tonic tonic(int key) const;
    /// The cell to play next. If no key can be played, the first cell says so.
    [[nodiscard]] CellProposal proposal() const;
    [[nodiscard]] StartProposal start(CellAddress address) const;
    /// Where a cell with a passage continues: its opening for the day, or its current tempo.
    [[nodiscard]] Tempo goesOnAt(CellAddress address) const;
    /// 0…1 of the target; 0 without a best.
    [[nodiscard]] double shareOfTarget(CellAddress address) const;
    [[nodiscard]] std::vector<ScaleWeek> weeks(int count) const;

    [[nodiscard]] Scale scale(CellAddress address) const;
    /// Its notes; nothing if the range does not contain its tonic.
    [[nodiscard]] std::optional<ScalePart> part(CellAddress address) const;
    /// True if it already has a passage, or one can be created.
    [[nodiscard]] bool canDrill(CellAddress address) const;
    /// The passage of that cell, created if necessary; none if it cannot be created.
    [[nodiscard]] Id passage(CellAddress address);

private:
    const ScaleGrid& grid() const;
    Id makePassage(CellAddress address, const ScalePart& part);
    void bringUpToDate(const PassageRecord& record, const Scale& scale, const ScalePart& part);

    PracticeBook& book_;
    mutable std::optional<ScaleGrid> grid_;
};

} // namespace piolo::practice
