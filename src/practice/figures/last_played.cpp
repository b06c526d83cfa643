// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/figures/last_played.h"

#include <cstdint>

namespace piolo::practice {

Id lastPlayed(const Notebook& notebook) {
    Id last;
    std::int64_t latest = -1;
    for (const Id& id : notebook.passages()) {
        const PassageRecord* const record = notebook.passage(id);
        const std::int64_t at = record->entries.empty() ? 0 : record->entries.back().at.utcMillis;
        if (at < latest) continue;
        latest = at;
        last = id;
    }
    return last;
}

} // namespace piolo::practice
