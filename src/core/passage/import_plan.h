// SPDX-License-Identifier: GPL-3.0-or-later
// What taking a set of pieces and passages into a notebook would change, and the facts that would do it.
#pragma once

#include "core/passage/difference.h"
#include "core/passage/passage_set.h"

#include <string>
#include <vector>

namespace piolo {

/// How a piece or passage of the set stands to the notebook's.
enum class ImportState : std::uint8_t { added, same, differs, removedHere };

/// One piece or passage of the set.
struct ImportItem {
    bool isPiece = false;
    Id id;
    std::string name; ///< as the set has it
    ImportState state = ImportState::added;
    std::vector<Difference> differences{}; ///< from what is here to what is in the set; none when added
    bool editedHere = false;       ///< a group that differs was edited by hand after it had been imported
    std::vector<FactBody> facts{}; ///< bring the notebook to what the set says; none when it is the same
};

/// Pieces first, then passages, each in the set's order.
[[nodiscard]] std::vector<ImportItem> importPlan(const PassageSet& set, const Notebook& notebook);

/// Whether what differs, or was removed here, is left as it is or taken from the set.
enum class Differing : std::uint8_t { leave, replace };
/// True when the item is to be recorded.
[[nodiscard]] bool takes(const ImportItem& item, Differing differing) noexcept;

} // namespace piolo
