// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/passage/import_review.h"

#include <algorithm>
#include <utility>

namespace piolo {

void ImportReview::use(std::vector<ImportItem> plan) {
    items_ = std::move(plan);
    std::erase_if(ticked_, [this](Id id) {
        const auto item = std::ranges::find(items_, id, &ImportItem::id);
        return item == items_.end() || !isAsked(*item);
    });
}

std::size_t ImportReview::count(ImportState state) const noexcept {
    return static_cast<std::size_t>(std::ranges::count(items_, state, &ImportItem::state));
}

std::size_t ImportReview::asked() const noexcept {
    return count(ImportState::differs) + count(ImportState::removedHere);
}

bool ImportReview::tick(std::size_t item, bool on) {
    if (item >= items_.size() || !isAsked(items_[item])) return false;
    if (on)
        ticked_.insert(items_[item].id);
    else
        ticked_.erase(items_[item].id);
    return true;
}

bool ImportReview::takesItem(const ImportItem& item) const {
    return takes(item, isTicked(item) ? Differing::replace : Differing::leave);
}

bool ImportReview::takesAny() const {
    return std::ranges::any_of(items_, [this](const ImportItem& item) { return takesItem(item); });
}

std::vector<FactBody> ImportReview::facts() const {
    std::vector<FactBody> facts;
    for (const ImportItem& item : items_)
        if (takesItem(item)) facts.insert(facts.end(), item.facts.begin(), item.facts.end());
    return facts;
}

} // namespace piolo
