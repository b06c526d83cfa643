// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/figures/curve_passages.h"

#include <algorithm>
#include <functional>
#include <utility>

namespace piolo::practice {

std::vector<Id> curvePassages(const Notebook& notebook, const LogFilter& filter) {
    if (!filter.passage.isNone()) return {filter.passage};
    std::vector<std::pair<std::int64_t, Id>> played;
    for (const Id id : notebook.passages()) {
        const PassageRecord* const record = notebook.passage(id);
        if (record == nullptr || record->entries.empty()) continue;
        if (!filter.piece.isNone() && record->passage.title.piece != filter.piece) continue;
        played.emplace_back(record->entries.back().at.utcMillis, id);
    }
    const auto end = played.begin() + static_cast<std::ptrdiff_t>(std::min(mostCurves, played.size()));
    std::partial_sort(played.begin(), end, played.end(), std::greater<>());
    std::vector<Id> ids;
    for (auto at = played.begin(); at != end; ++at) ids.push_back(at->second);
    return ids;
}

} // namespace piolo::practice
