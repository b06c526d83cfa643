// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/drill/next_passage.h"

#include <algorithm>
#include <cstddef>

namespace piolo::practice {

namespace {

Id firstKept(std::span<const ListedPassage> list) {
    const auto found = std::ranges::find(list, false, &ListedPassage::removed);
    return found == list.end() ? Id{} : found->id;
}

Id nextInList(std::span<const ListedPassage> list, Id current) {
    const auto here = std::ranges::find(list, current, &ListedPassage::id);
    if (here == list.end()) return firstKept(list);
    const auto place = static_cast<std::size_t>(here - list.begin());
    const Id after = firstKept(list.subspan(place + 1));
    return after.isNone() ? firstKept(list.first(place)) : after;
}

} // namespace

Id nextPassage(Id current, bool isScale, std::span<const ListedPassage> list,
               const std::function<Id()>& suggestedScale) {
    if (isScale) {
        const Id suggested = suggestedScale();
        if (!suggested.isNone() && suggested != current) return suggested;
    }
    return nextInList(list, current);
}

} // namespace piolo::practice
