// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/passage/import_plan.h"

#include <algorithm>
#include <unordered_map>
#include <unordered_set>

namespace piolo {

namespace {

ImportState stateOf(bool known, bool removed, bool differs) {
    if (!known) return ImportState::added;
    if (removed) return ImportState::removedHere;
    return differs ? ImportState::differs : ImportState::same;
}

PieceFact edit(const Piece& from, const Piece& to) {
    PieceFact fact;
    fact.piece = to.id;
    forEachMember([&](const auto& member) {
        if (from.*member.value != to.*member.value) fact.*member.given = to.*member.value;
    });
    return fact;
}

/// A fact with everything about a piece that is new here; empty values are left out.
PieceFact made(const Piece& piece) {
    PieceFact fact = edit({piece.id, {}, {}, {}}, piece);
    fact.name = piece.name;
    fact.instrument = piece.instrument;
    fact.due.emplace(piece.due);
    return fact;
}

PassageFact importOf(const Passage& passage, const GroupMarks& groups) {
    PassageFact fact = factOf(passage, groups);
    fact.imported = true;
    return fact;
}

/// The pieces of the notebook.
class Shelf {
public:
    explicit Shelf(const Notebook& notebook) {
        for (Piece& piece : notebook.pieces(true)) pieces_.emplace(piece.id, std::move(piece));
        for (const Piece& piece : notebook.pieces()) standing_.insert(piece.id);
    }
    [[nodiscard]] ImportItem item(const Piece& piece) const {
        ImportItem item{true, piece.id, piece.name};
        const auto found = pieces_.find(piece.id);
        const bool known = found != pieces_.end();
        if (known) item.differences = differences(found->second, piece);
        item.state = stateOf(known, !standing_.contains(piece.id), !item.differences.empty());
        if (!known)
            item.facts.emplace_back(made(piece));
        else if (!item.differences.empty())
            item.facts.emplace_back(edit(found->second, piece));
        return item;
    }

private:
    std::unordered_map<Id, Piece> pieces_;
    std::unordered_set<Id> standing_;
};

ImportItem itemOf(const Passage& passage, const PassageRecord* here) {
    ImportItem item{false, passage.id, passage.title.name};
    GroupMarks groups = sayingGroups(passage);
    if (here != nullptr) {
        item.differences = differences(here->passage, passage);
        groups = differingGroups(here->passage, passage);
        item.editedHere = groups.meets(here->editedHere);
    }
    item.state = stateOf(here != nullptr, here != nullptr && here->removed, groups.any());
    if (groups.any()) item.facts.emplace_back(importOf(passage, groups));
    return item;
}

} // namespace

std::vector<ImportItem> importPlan(const PassageSet& set, const Notebook& notebook) {
    std::vector<ImportItem> plan;
    const Shelf shelf(notebook);
    for (const Piece& piece : set.pieces) plan.push_back(shelf.item(piece));
    for (const Passage& passage : set.passages) plan.push_back(itemOf(passage, notebook.passage(passage.id)));
    for (ImportItem& item : plan)
        if (item.state == ImportState::removedHere) item.facts.emplace_back(RemovalFact{item.id, false});
    return plan;
}

bool takes(const ImportItem& item, Differing differing) noexcept {
    if (item.state == ImportState::added) return true;
    return item.state != ImportState::same && differing == Differing::replace;
}

} // namespace piolo
