// SPDX-License-Identifier: GPL-3.0-or-later
#include "target.h"

#include "core/passage/import_plan.h"
#include "journal/passage_file/passage_file.h"

namespace piolo::fuzz {

void runPassages(std::string_view bytes) {
    const auto set = journal::readPassages(bytes, "a.piolo.json");
    if (!set) {
        hold(set.fault().location.file == "a.piolo.json", "a fault names its file");
        return;
    }
    const auto again = journal::readPassages(journal::passageFileText(*set), "a.piolo.json");
    hold(again && *again == *set, "what was read is written so that it is read again");
    hold(importPlan(*set, Notebook{}).size() == set->pieces.size() + set->passages.size(),
         "each piece and passage is in the plan once");
}

} // namespace piolo::fuzz
