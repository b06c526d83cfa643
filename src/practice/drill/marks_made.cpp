// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/drill/marks_made.h"

#include <map>

namespace piolo::practice {

// What each passage would take back is its own newest mark: the newest of them all is the one made last.
Id MarksMade::passageOfNewest(const Notebook& notebook, std::string_view device) const {
    std::map<Id, Id> targets;
    for (auto made = facts_.rbegin(); made != facts_.rend(); ++made) {
        const auto [target, isNew] = targets.try_emplace(made->passage);
        if (isNew) target->second = notebook.backTarget(made->passage, device);
        if (target->second == made->fact) return made->passage;
    }
    return {};
}

} // namespace piolo::practice
