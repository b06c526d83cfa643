// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rule/tempo_search.h"

#include <span>

namespace piolo {

namespace {

void follow(TempoSearch& search, const Entry& entry) {
    const bool givenUp = entry.kind == Entry::Kind::tempo || entry.at.date() != search.day;
    if (givenUp || entry.fullStreak) search.over = true;
    if (!givenUp && entry.fullStreak) search.found = entry.tempo;
}

std::vector<TempoSearch> searchesAmong(std::span<const Entry> entries) {
    std::vector<TempoSearch> searches;
    for (const Entry& entry : entries) {
        if (!searches.empty() && !searches.back().over) follow(searches.back(), entry);
        if (entry.kind == Entry::Kind::tempo && entry.reason == Reason::named)
            searches.push_back({entry.id, entry.at.date(), entry.tempo, std::nullopt, false});
    }
    return searches;
}

} // namespace

std::vector<TempoSearch> searchesIn(const PassageRecord& record) { return searchesAmong(record.entries); }

std::optional<TempoSearch> searchOn(const PassageRecord& record, Date day) {
    const std::span<const Entry> all(record.entries);
    std::size_t begins = all.size();
    while (begins > 0 && all[begins - 1].at.date() == day) --begins;
    const auto searches = searchesAmong(all.subspan(begins));
    if (searches.empty()) return std::nullopt;
    return searches.back();
}

} // namespace piolo
