// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tempo_search.h"

namespace piolo {

namespace {

void follow(TempoSearch& search, const Entry& entry) {
    const bool givenUp = entry.kind == Entry::Kind::tempo || entry.at.date() != search.day;
    if (givenUp || entry.fullStreak) search.over = true;
    if (!givenUp && entry.fullStreak) search.found = entry.tempo;
}

} // namespace

std::vector<TempoSearch> searchesIn(const PassageRecord& record) {
    std::vector<TempoSearch> searches;
    for (const Entry& entry : record.entries) {
        if (!searches.empty() && !searches.back().over) follow(searches.back(), entry);
        if (entry.kind == Entry::Kind::tempo && entry.reason == Reason::named)
            searches.push_back({entry.id, entry.at.date(), entry.tempo, std::nullopt, false});
    }
    return searches;
}

} // namespace piolo
