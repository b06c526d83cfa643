// SPDX-License-Identifier: GPL-3.0-or-later
// A history whose facts are stored elsewhere until they are needed, and what is known about it without them.
#pragma once

#include "core/history/notebook.h"

#include <cstddef>
#include <optional>
#include <vector>

namespace piolo {

/// The result of one passage's facts. It answers most queries about a passage.
struct PassageDigest {
    Id passage;
    Date first{9999, 12, 31}; ///< of the runs and tempi
    Date last{1, 1, 1};
    std::optional<PassageRecord> record; ///< without its entries; nothing: no fact gives tempi
    Fact defining;           ///< the fact that first gave tempi, only its id, device, seq and order
    std::size_t entries = 0; ///< the number of entries in the record
    Entry newest;            ///< the last of them
};

/// Never changes. Any thread.
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
    /// The facts about the passage at index `place` of passages(), in order.
    [[nodiscard]] virtual std::vector<Fact> facts(std::size_t place) const = 0;
    /// The facts that are not about a passage.
    [[nodiscard]] virtual std::vector<Fact> otherFacts() const = 0;
};

} // namespace piolo
