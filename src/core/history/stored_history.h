// SPDX-License-Identifier: GPL-3.0-or-later
// A history whose facts are kept elsewhere until they are needed, and what is known of it without them.
#pragma once

#include "core/history/notebook.h"

#include <cstddef>
#include <optional>
#include <vector>

namespace piolo {

/// What the facts of one passage come to. Most of what is asked about a passage is answered from this.
struct PassageDigest {
    Id passage;
    Date first{9999, 12, 31}; ///< of the runs and tempi
    Date last{1, 1, 1};
    std::optional<PassageRecord> record; ///< its entries left out; nothing: no fact gives tempi
    Fact defining;           ///< the fact that first gave tempi, by id, device, seq and order only
    std::size_t entries = 0; ///< so many are in the record
    Entry newest;            ///< the last of them
};

/// Does not change. Any thread.
class StoredHistory {
public:
    StoredHistory() = default;
    virtual ~StoredHistory() = default;
    StoredHistory(const StoredHistory&) = delete;
    StoredHistory& operator=(const StoredHistory&) = delete;

    /// All facts, each once.
    [[nodiscard]] virtual std::size_t factCount() const = 0;
    [[nodiscard]] virtual bool knows(Id fact) const = 0;
    /// One for each passage that any fact is about.
    [[nodiscard]] virtual const std::vector<PassageDigest>& passages() const = 0;
    /// The facts about the passage at `place` of passages(), in their order.
    [[nodiscard]] virtual std::vector<Fact> facts(std::size_t place) const = 0;
    /// The facts about no passage.
    [[nodiscard]] virtual std::vector<Fact> otherFacts() const = 0;
    /// What any back takes back.
    [[nodiscard]] virtual std::vector<Id> retracted() const = 0;
};

} // namespace piolo
