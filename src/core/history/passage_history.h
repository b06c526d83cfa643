// SPDX-License-Identifier: GPL-3.0-or-later
// All facts of one passage and its record, which is folded again only if necessary.
#pragma once

#include "core/history/passage_fold.h"
#include "core/history/stored_history.h"
#include "core/history/wrong_clocks.h"

#include <memory>
#include <optional>
#include <vector>

namespace piolo {

/// A fact that comes last and corrects nothing is folded on top at the next reading. After any other fact,
/// the next reading folds the whole passage again, in time proportional to the number of its facts.
class PassageHistory {
public:
    /// `clocks` must outlive this object.
    PassageHistory(Id passage, const WrongClocks& clocks) : passage_(passage), clocks_(&clocks) {}
    /// The passage at index `place` of the stored ones. Its facts are read only if its digest is not enough:
    /// the digest is that of the stored clock facts, which `clocks` has already.
    PassageHistory(std::shared_ptr<const StoredHistory> stored, std::size_t place, const WrongClocks& clocks);
    PassageHistory(PassageHistory&&) = default;
    PassageHistory& operator=(PassageHistory&&) = default;
    ~PassageHistory() = default;

    /// `fact` must outlive this object: ten years of facts are in memory only once.
    void add(const Fact& fact);
    /// True if nothing was added since the last folding.
    [[nodiscard]] bool isFolded() {
        keepDates();
        return stored_ != nullptr || (!stale_ && (!fold_ || folded_ == facts_.size()));
    }
    /// The record; null while there is no valid fact with tempi. Valid until the next add().
    PassageRecord* record();
    /// The fact that first gave tempi; null if record() is null. For a stored passage, only its position in
    /// the order is known. Valid until the next add().
    const Fact* definition();
    /// The digest from which a stored passage is read.
    PassageDigest digest();
    /// What a `back` on `device` would retract; none if nothing is left.
    Id backTarget(std::string_view device);
    /// True if that fact was taken back and not put back, by facts of this history.
    bool retracts(Id fact);
    /// The content of that fact; null if it is not one of these. Valid until the next add().
    const FactBody* body(Id fact);
    /// True if `date` needs no opening: it has a run or tempo, or its opening was taken back.
    bool opened(Date date);
    /// False: there is certainly no run or tempo of that date among the facts. True: there may be one. Folds
    /// nothing.
    [[nodiscard]] bool reaches(Date date) {
        keepDates();
        return first_ <= date && date <= last_;
    }
    /// Adds the runs and tempi after `date` that count.
    void addAhead(Date date, AheadFacts& ahead);

private:
    void remember(const Fact& fact);
    /// Forgets the dates if a clock fact came since.
    void keepDates();
    void widen(const Fact& fact);
    [[nodiscard]] Date dateOf(const Fact& fact) const { return clocks_->at(fact).date(); }
    void fetch();
    void fold();
    [[nodiscard]] bool counts(const Fact& fact) const { return !corrections_.retracted.contains(fact.id); }

    Id passage_;
    const WrongClocks* clocks_;
    std::size_t clocksKnown_ = 0;                 ///< the version of clocks_ that the dates here are of
    std::shared_ptr<const StoredHistory> stored_; ///< null once the facts are in memory
    std::size_t place_ = 0;
    std::optional<PassageRecord> summary_; ///< from the digest; kept until the next add(), as promised
    std::vector<Fact> fetched_;
    std::vector<const Fact*> facts_;
    Date first_{9999, 12, 31}; ///< of the runs and tempi
    Date last_{1, 1, 1};
    Corrections corrections_;
    std::optional<PassageFold> fold_;
    std::size_t folded_ = 0;   ///< number of facts_ that are in fold_
    std::size_t defining_ = 0; ///< index of the fact that first gave tempi
    bool stale_ = true;        ///< facts_ may be out of order; corrections_ and fold_ are out of date
};

} // namespace piolo
