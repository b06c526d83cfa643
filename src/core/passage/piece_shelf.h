// SPDX-License-Identifier: GPL-3.0-or-later
// The pieces, from the facts that made and edited them, and what was removed.
#pragma once

#include "core/history/fact.h"

#include <optional>
#include <unordered_map>
#include <vector>

namespace piolo {

/// A value for which the newest fact wins, whatever the order of arrival.
class Newest {
public:
    /// True when `fact` stands after all that were offered before.
    bool offer(const Fact& fact);

private:
    std::optional<Fact> holder_;
};

/// Pieces by id; each group of a piece is the newest fact's that has it.
class PieceShelf {
public:
    void add(const Fact& fact, const PieceFact& edit);
    /// In the order of their names, then ids.
    [[nodiscard]] std::vector<Piece> pieces() const;
    /// Nothing for an id of which no fact is known.
    [[nodiscard]] std::optional<Piece> piece(Id id) const;

private:
    struct Slot {
        Piece piece;
        Newest name, instrument, due, composer, transposition, bars, music, notes;
    };
    std::unordered_map<Id, Slot> slots_;
};

/// Which passages and pieces are removed: the newest fact of each subject says.
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
