// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/figures/sitting_figures.h"

namespace piolo::practice {

SittingFigures sittingFigures(const PassageRecord& record, std::size_t first) {
    SittingFigures figures;
    for (std::size_t i = first; i < record.entries.size(); ++i) {
        const Entry& entry = record.entries.begin()[i];
        if (entry.kind == Entry::Kind::tempo || entry.mark == Mark::voided) continue;
        ++(entry.mark == Mark::clean ? figures.clean : figures.missed);
        if (entry.mark == Mark::missed && !entry.spots.empty())
            figures.missedBars.insert(entry.spots.front().bar);
    }
    return figures;
}

} // namespace piolo::practice
