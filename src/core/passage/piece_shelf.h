// SPDX-License-Identifier: GPL-3.0-or-later
// The pieces, from the facts that created and edited them, and what was removed.
#pragma once

#include "core/history/fact.h"

#include <array>
#include <optional>
#include <unordered_map>
#include <vector>

namespace piolo {

/// A value for which the newest fact wins, in any order of arrival.
class Newest {
public:
    /// True if `fact` comes after all those offered before.
    bool offer(const Fact& fact);

private:
    std::optional<Fact> holder_;
};

/// Pieces by id. Each group of a piece comes from the newest fact that has it.
class PieceShelf {
public:
    void add(const Fact& fact, const PieceFact& edit);
    /// In order of name, then id.
    [[nodiscard]] std::vector<Piece> pieces() const;
    /// Nothing if no fact is known for the id.
    [[nodiscard]] std::optional<Piece> piece(Id id) const;

private:
    struct Slot {
        Piece piece;
        std::array<Newest, pieceMemberCount> newest{}; ///< for each member
    };
    std::unordered_map<Id, Slot> slots_;
};

/// Which passages and pieces are removed, according to the newest fact about each.
class Removals {
public:
    void add(const Fact& fact, const RemovalFact& removal);
    [[nodiscard]] bool removed(Id subject) const;

private:
    struct Slot {
        Newest newest;
        bool removed = false;
    };
    std::unordered_map<Id, Slot> slots_;
};

} // namespace piolo
