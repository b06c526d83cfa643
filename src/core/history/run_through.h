// SPDX-License-Identifier: GPL-3.0-or-later
// Pieces played from start to finish.
#pragma once

#include "core/history/wrong_clocks.h"

#include <unordered_map>
#include <vector>

namespace piolo {

struct RunThrough {
    Id id;
    Timestamp at; ///< when it ended
    RunThroughFact played;
};

/// The run-throughs of all pieces, in any order of arrival.
class RunThroughs {
public:
    void add(const Fact& fact, const RunThroughFact& played);
    /// All run-throughs of a piece, oldest first, also those taken back.
    [[nodiscard]] std::vector<RunThrough> of(Id piece, const WrongClocks& clocks) const;
    /// Adds those after `date`.
    void addAhead(Date date, const WrongClocks& clocks, AheadFacts& ahead) const;

private:
    std::unordered_map<Id, std::vector<Fact>> pieces_; ///< in order
};

/// True if it was finished, with no stop in these bars (the piece's own numbers, both inclusive) and none in
/// an unknown bar.
[[nodiscard]] bool playedThrough(const RunThroughFact& played, std::int32_t firstBar, std::int32_t lastBar);

} // namespace piolo
