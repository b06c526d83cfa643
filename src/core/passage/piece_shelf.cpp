// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/passage/piece_shelf.h"

#include <algorithm>
#include <tuple>

namespace piolo {

bool Newest::offer(const Fact& fact) {
    if (holder_ && standsBefore(fact, *holder_)) return false;
    holder_ = fact;
    return true;
}

void PieceShelf::add(const Fact& fact, const PieceFact& edit) {
    Slot& slot = slots_[edit.piece];
    slot.piece.id = edit.piece;
    auto newest = slot.newest.begin();
    forEachMember([&](const auto& member) {
        const auto& given = edit.*member.given;
        if (given && newest->offer(fact)) slot.piece.*member.value = *given;
        ++newest;
    });
}

std::vector<Piece> PieceShelf::pieces() const {
    std::vector<Piece> shelf;
    for (const auto& [id, slot] : slots_) shelf.push_back(slot.piece);
    std::sort(shelf.begin(), shelf.end(),
              [](const Piece& a, const Piece& b) { return std::tie(a.name, a.id) < std::tie(b.name, b.id); });
    return shelf;
}

std::optional<Piece> PieceShelf::piece(Id id) const {
    const auto found = slots_.find(id);
    if (found == slots_.end()) return std::nullopt;
    return found->second.piece;
}

void Removals::add(const Fact& fact, const RemovalFact& removal) {
    Slot& slot = slots_[removal.subject];
    if (slot.newest.offer(fact)) slot.removed = removal.removed;
}

bool Removals::removed(Id subject) const {
    const auto found = slots_.find(subject);
    return found != slots_.end() && found->second.removed;
}

} // namespace piolo
