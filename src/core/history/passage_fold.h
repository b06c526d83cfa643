// SPDX-License-Identifier: GPL-3.0-or-later
// Folds one passage: its facts in order, one after the other, into its record.
#pragma once

#include "core/history/notebook.h"

#include <unordered_map>
#include <unordered_set>

namespace piolo {

/// What facts say about others, collected before folding.
struct Corrections {
    std::unordered_set<Id> retracted;
    std::unordered_set<Id> missed;      ///< runs with a late miss that counts
    std::unordered_set<Id> doubted;     ///< runs with a doubt that counts
    std::unordered_map<Id, Mark> marks; ///< of runs whose mark was corrected
};

/// All corrections made by `facts`, which are in order: of backs and corrections that name a fact, the last
/// one decides whether it counts; of late misses, doubts and marks, each applies to what stands before it. A
/// back that names another back has no effect, nor has a correction that names a back or a correction.
[[nodiscard]] Corrections correctionsOf(std::span<const Fact* const> facts);

/// Builds a record from facts that come in order.
class PassageFold {
public:
    /// `tempi` are those of the first fact that has any; they apply from the beginning.
    PassageFold(Id passage, const Tempi& tempi);

    /// Folds the next fact, which happened at `at`. It must not be a retracted one.
    void add(const Fact& fact, const Timestamp& at, const Corrections& corrections);
    [[nodiscard]] PassageRecord& record() noexcept { return record_; }
    [[nodiscard]] const PassageRecord& record() const noexcept { return record_; }

private:
    void run(Entry entry, const RunFact& run, const Corrections& corrections);
    void tempo(Entry entry, const TempoFact& tempo);
    void note(const NoteFact& note);
    void feel(const FeltBeatFact& felt);
    void edit(const PassageFact& edit);
    void markEdited(const PassageFact& edit);
    void turnTo(Date date);
    void remember(Entry entry, const Outcome& outcome);

    PassageRecord record_;
    GroupMarks imported_; ///< groups that were ever imported
    bool moved_ = false;  ///< a run has counted or a tempo was set: editing the start no longer moves the
                          ///< standing
};

} // namespace piolo
