// SPDX-License-Identifier: GPL-3.0-or-later
// Which passage to drill after the current one.
#pragma once

#include "core/base/id.h"

#include <functional>
#include <span>

namespace piolo::practice {

/// A passage as the list shows it.
struct ListedPassage {
    Id id;
    bool removed = false;
};

/// After a scale, the one that the grid suggests, unless it is the current one; otherwise the next one in the
/// order of the list that is not removed, and after the last the first. None if there is no other.
/// `current` may be missing from the list. `suggestedScale` is called only after a scale: it may create the
/// passage, and returns none if it cannot.
[[nodiscard]] Id nextPassage(Id current, bool isScale, std::span<const ListedPassage> list,
                             const std::function<Id()>& suggestedScale);

} // namespace piolo::practice
