// SPDX-License-Identifier: GPL-3.0-or-later
// The differences between two versions of a piece or passage, value by value.
#pragma once

#include "core/history/fact.h"
#include "core/passage/group_marks.h"
#include "core/passage/passage.h"
#include "core/passage/piece.h"

#include <string>
#include <vector>

namespace piolo {

/// A value that differs. The key is the journal's, with its group: "tempi.target". Values are written as
/// players write them (tempi in BPM, "3/8", "yes"); empty for none.
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
/// The groups that a passage must have, and the others that contain something.
[[nodiscard]] GroupMarks sayingGroups(const Passage& passage) noexcept;
/// The groups needed to create the passage: the required ones, its click, and other optional ones only if
/// they contain something.
[[nodiscard]] GroupMarks makingGroups(const Passage& passage) noexcept;
/// A fact that records these groups of the passage.
[[nodiscard]] PassageFact factOf(const Passage& passage, const GroupMarks& groups);

} // namespace piolo
