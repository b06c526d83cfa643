// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/passage/group_marks.h"

#include "core/facts/passage_groups.h"

namespace piolo {

bool GroupMarks::meets(const GroupMarks& other) const noexcept {
    bool both = false;
    forEachGroup([&](const auto& group) { both = both || (this->*group.mark && other.*group.mark); });
    return both;
}

} // namespace piolo
