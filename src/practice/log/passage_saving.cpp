// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/log/passage_saving.h"

#include "core/passage/difference.h"

namespace piolo::practice {

void savePassage(PracticeBook& book, Passage wanted) {
    const PassageRecord* const known = book.notebook().passage(wanted.id);
    if (known != nullptr) wanted.title.origin = known->passage.title.origin;
    const GroupMarks groups =
        known == nullptr ? makingGroups(wanted) : differingGroups(known->passage, wanted);
    if (groups.any()) book.record(factOf(wanted, groups));
}

} // namespace piolo::practice
