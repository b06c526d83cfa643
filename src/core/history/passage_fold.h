// SPDX-License-Identifier: GPL-3.0-or-later
// The fold of one passage: its facts in their order, one after the other, into its record.
#pragma once

#include "core/history/notebook.h"

#include <unordered_set>

namespace piolo {

/// What later facts say about earlier ones, gathered before anything is folded.
struct Corrections {
    std::unordered_set<Id> retracted;
    std::unordered_set<Id> missed;  ///< runs named by a late miss that stands
    std::unordered_set<Id> doubted; ///< runs named by a doubt that stands
};

/// The corrections that all of `facts` make, in whatever order they come. A back that names a back changes
/// nothing: backs are never looked up among the retracted.
[[nodiscard]] Corrections correctionsOf(std::span<const Fact* const> facts);

/// Grows a record by facts that come in their order.
class PassageFold {
public:
    /// `tempi`: those of the first fact that has any; they hold from the beginning.
    PassageFold(Id passage, const Tempi& tempi);

    /// Folds the next fact. A retracted one must not be given.
    void add(const Fact& fact, const Corrections& corrections);
    [[nodiscard]] PassageRecord& record() noexcept { return record_; }
    [[nodiscard]] const PassageRecord& record() const noexcept { return record_; }

private:
    void run(const Fact& fact, const RunFact& run, const Corrections& corrections);
    void tempo(const Fact& fact, const TempoFact& tempo);
    void note(const NoteFact& note);
    void feel(const FeltBeatFact& felt);
    void edit(const PassageFact& edit);
    void markEdited(const PassageFact& edit);
    void turnTo(Date date);
    void remember(Entry entry, const Outcome& outcome);

    PassageRecord record_;
    GroupMarks imported_; ///< were imported at some time
    bool moved_ = false;  ///< a run counted or a tempo was set: an edited start no longer moves the standing
};

} // namespace piolo
