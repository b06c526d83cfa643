// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/log/passage_removal.h"

namespace piolo::practice {

bool PassageRemoval::set(Id passage, bool removed) {
    const PassageRecord* const record = book_.notebook().passage(passage);
    if (record == nullptr || record->removed == removed || book_.readOnly()) return false;
    if (removed) last_ = passage;
    if (!removed && passage == last_) last_ = Id{};
    book_.record(RemovalFact{passage, removed});
    return true;
}

} // namespace piolo::practice
