// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/passages/row_changes.h"

#include <algorithm>
#include <set>
#include <utility>

namespace piolo::models {

namespace {

using Key = std::pair<Id, Id>;

Key keyOf(const PassageRow& row) { return {row.id, row.piece}; }

/// Splits `list` into the rows that `other` has, too, and the runs of those that it does not.
struct Split {
    std::vector<Key> shared;
    std::vector<RowRun> others;

    Split(const std::vector<PassageRow>& list, const std::vector<PassageRow>& other) {
        std::set<Key> keys;
        for (const PassageRow& row : other) keys.insert(keyOf(row));
        for (int i = 0; i < static_cast<int>(list.size()); ++i) {
            const Key key = keyOf(list[static_cast<std::size_t>(i)]);
            if (keys.contains(key))
                shared.push_back(key);
            else if (!others.empty() && others.back().last == i - 1)
                others.back().last = i;
            else
                others.push_back({i, i});
        }
    }
};

} // namespace

std::optional<RowChanges> rowChanges(const std::vector<PassageRow>& before,
                                     const std::vector<PassageRow>& after) {
    Split old(before, after);
    Split made(after, before);
    if (old.shared != made.shared || old.others.size() + made.others.size() > mostRowChanges)
        return std::nullopt;
    std::ranges::reverse(old.others);
    return RowChanges{std::move(old.others), std::move(made.others)};
}

} // namespace piolo::models
