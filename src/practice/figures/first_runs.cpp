// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/figures/first_runs.h"

namespace piolo::practice {

bool isNew(const Notebook& notebook) {
    std::size_t runs = 0;
    for (const Id id : notebook.passages()) {
        const PassageRecord* const record = notebook.passage(id);
        if (record == nullptr) continue;
        for (const Entry& entry : record->entries) {
            if (entry.kind != Entry::Kind::tempo) ++runs;
            if (runs >= firstRuns) return false;
        }
    }
    return true;
}

} // namespace piolo::practice
