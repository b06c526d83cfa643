// SPDX-License-Identifier: GPL-3.0-or-later
// All facts of one passage, and its record, folded again only when it must be.
#pragma once

#include "core/history/passage_fold.h"
#include "core/history/stored_history.h"

#include <memory>
#include <optional>
#include <vector>

namespace piolo {

/// A fact that stands last and corrects nothing is folded on top at the next reading; any other makes the
/// next reading fold the whole passage again, in time that grows with the number of its facts.
class PassageHistory {
public:
    explicit PassageHistory(Id passage) : passage_(passage) {}
    /// The passage at `place` of what is stored. Its facts are fetched only when its digest is not enough.
    PassageHistory(std::shared_ptr<const StoredHistory> stored, std::size_t place);
    PassageHistory(PassageHistory&&) = default;
    PassageHistory& operator=(PassageHistory&&) = default;
    ~PassageHistory() = default;

    /// `fact` outlives this: ten years of them stand in memory once.
    void add(const Fact& fact);
    /// Nothing was added since it was folded last.
    [[nodiscard]] bool isFolded() const noexcept {
        return stored_ != nullptr || (!stale_ && (!fold_ || folded_ == facts_.size()));
    }
    /// The record, or nothing while no fact with tempi stands. Good until the next add().
    PassageRecord* record();
    /// The fact that first gave tempi; nothing when record() is nothing. Of a stored passage only its place
    /// in the order is known. Good until the next add().
    const Fact* definition();
    /// What a stored passage is read from.
    PassageDigest digest();
    /// What `back` on `device` would retract; none when nothing is left.
    Id backTarget(std::string_view device);
    /// Whether `date` needs no opening: a run or tempo of that date stands, or its opening was taken back.
    bool opened(Date date);
    /// False: no run and no tempo of that date is among the facts. True: there may be one. Folds nothing.
    [[nodiscard]] bool reaches(Date date) const noexcept { return first_ <= date && date <= last_; }

private:
    void remember(const Fact& fact);
    void fetch();
    void fold();
    [[nodiscard]] bool stands(const Fact& fact) const { return !corrections_.retracted.contains(fact.id); }

    Id passage_;
    std::shared_ptr<const StoredHistory> stored_; ///< none as soon as the facts are here
    std::size_t place_ = 0;
    std::optional<PassageRecord> summary_; ///< while they are not
    std::vector<Fact> fetched_;
    std::vector<const Fact*> facts_;
    Date first_{9999, 12, 31}; ///< of the runs and tempi
    Date last_{1, 1, 1};
    Corrections corrections_;
    std::optional<PassageFold> fold_;
    std::size_t folded_ = 0;   ///< so many of facts_ are in fold_
    std::size_t defining_ = 0; ///< index of the fact that first gave tempi
    bool stale_ = true;        ///< facts_ may be out of order, corrections_ and fold_ are out of date
};

} // namespace piolo
