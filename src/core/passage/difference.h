// SPDX-License-Identifier: GPL-3.0-or-later
// What differs between two versions of a piece or a passage, value by value.
#pragma once

#include "core/history/fact.h"
#include "core/passage/group_marks.h"
#include "core/passage/passage.h"

#include <string>
#include <vector>

namespace piolo {

/// A value that is not the same in both. The key is the journal's, with its group: "tempi.target"; the values
/// are written as a player writes them (tempi in BPM, "3/8", "yes"), empty for none.
struct Difference {
    std::string key;
    std::string from;
    std::string to;
    bool operator==(const Difference&) const = default;
};

[[nodiscard]] std::vector<Difference> differences(const Piece& from, const Piece& to);
[[nodiscard]] std::vector<Difference> differences(const Passage& from, const Passage& to);
/// The groups in which they differ.
[[nodiscard]] GroupMarks differingGroups(const Passage& from, const Passage& to) noexcept;
/// The groups that make a passage: those that may be missing only where they say something, but for its
/// click.
[[nodiscard]] GroupMarks makingGroups(const Passage& passage) noexcept;
/// What records these groups of it.
[[nodiscard]] PassageFact factOf(const Passage& passage, const GroupMarks& groups);

} // namespace piolo
