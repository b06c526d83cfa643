// SPDX-License-Identifier: GPL-3.0-or-later
// The review of an import: which items the player wants replaced, and the facts that follow.
#pragma once

#include "core/passage/import_plan.h"

#include <cstddef>
#include <unordered_set>
#include <vector>

namespace piolo {

/// Plain values. New items are always taken; those that differ or were removed here only if they are ticked.
class ImportReview {
public:
    /// Reviews this plan. Ticks stay on items that it still asks about.
    void use(std::vector<ImportItem> plan);
    void clear() { *this = {}; }

    [[nodiscard]] const std::vector<ImportItem>& items() const noexcept { return items_; }
    [[nodiscard]] std::size_t count(ImportState state) const noexcept;
    /// The number of items that differ or were removed here, and how many of them are ticked.
    [[nodiscard]] std::size_t asked() const noexcept;
    [[nodiscard]] std::size_t ticked() const noexcept { return ticked_.size(); }
    [[nodiscard]] bool isTicked(const ImportItem& item) const { return ticked_.contains(item.id); }
    /// False if there is no such item, or nothing to ask about it.
    bool tick(std::size_t item, bool on);

    /// True if anything would be recorded.
    [[nodiscard]] bool takesAny() const;
    /// What is to be recorded.
    [[nodiscard]] std::vector<FactBody> facts() const;

private:
    [[nodiscard]] bool takesItem(const ImportItem& item) const;

    std::vector<ImportItem> items_;
    std::unordered_set<Id> ticked_;
};

/// True if the player decides about it: it differs or was removed here.
[[nodiscard]] inline bool isAsked(const ImportItem& item) noexcept {
    return item.state == ImportState::differs || item.state == ImportState::removedHere;
}

} // namespace piolo
