// SPDX-License-Identifier: GPL-3.0-or-later
// What importing a set of pieces and passages would change in a notebook, and the facts for doing it.
#pragma once

#include "core/passage/difference.h"
#include "core/passage/passage_set.h"

#include <string>
#include <vector>

namespace piolo {

/// How a piece or passage of the set compares with the notebook.
enum class ImportState : std::uint8_t { added, same, differs, removedHere };

/// One piece or passage of the set.
struct ImportItem {
    bool isPiece = false;
    Id id;
    std::string name; ///< as in the set
    ImportState state = ImportState::added;
    std::vector<Difference> differences{}; ///< from the notebook's values to those of the set; empty if added
    bool editedHere = false;               ///< a group that differs was edited by hand after it was imported
    std::vector<FactBody> facts{};         ///< make the notebook match the set; empty if nothing differs
};

/// Pieces first, then passages, each in the order of the set.
[[nodiscard]] std::vector<ImportItem> importPlan(const PassageSet& set, const Notebook& notebook);

/// Whether items that differ, or were removed here, are left alone or replaced from the set.
enum class Differing : std::uint8_t { leave, replace };
/// True if the item is to be recorded.
[[nodiscard]] bool takes(const ImportItem& item, Differing differing) noexcept;

} // namespace piolo
