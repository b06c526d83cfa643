// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/history/run_through.h"

#include <algorithm>

namespace piolo {

void RunThroughs::add(const Fact& fact, const RunThroughFact& played) {
    std::vector<Fact>& all = pieces_[played.piece];
    all.insert(std::upper_bound(all.begin(), all.end(), fact, standsBefore), fact);
}

std::vector<RunThrough> RunThroughs::of(Id piece, const WrongClocks& clocks) const {
    std::vector<RunThrough> list;
    const auto found = pieces_.find(piece);
    if (found == pieces_.end()) return list;
    for (const Fact& fact : found->second)
        list.push_back({fact.id, clocks.at(fact), std::get<RunThroughFact>(fact.body)});
    return list;
}

void RunThroughs::addAhead(Date date, const WrongClocks& clocks, AheadFacts& ahead) const {
    for (const auto& [piece, facts] : pieces_)
        for (const Fact& fact : facts)
            if (date < clocks.at(fact).date()) ahead.add(fact);
}

bool playedThrough(const RunThroughFact& played, std::int32_t firstBar, std::int32_t lastBar) {
    return played.finished && std::none_of(played.stops.begin(), played.stops.end(), [&](const Stop& stop) {
               return stop.bar == 0 || (firstBar <= stop.bar && stop.bar <= lastBar);
           });
}

} // namespace piolo
