// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/log/passage_removal.h"

namespace piolo::practice {

bool setRemoved(PracticeBook& book, Id passage, bool removed) {
    const PassageRecord* const record = book.notebook().passage(passage);
    if (record == nullptr || record->removed == removed || book.readOnly()) return false;
    book.record(RemovalFact{passage, removed});
    return true;
}

} // namespace piolo::practice
