// SPDX-License-Identifier: GPL-3.0-or-later
// A set of groups of a passage: one mark for each.
#pragma once

namespace piolo {

/// The groups in which a passage is recorded.
struct GroupMarks {
    bool title = false;
    bool music = false;
    bool tempi = false;
    bool click = false;
    bool manner = false;
    bool notes = false;
    bool scale = false;
    bool operator==(const GroupMarks&) const noexcept = default;

    [[nodiscard]] bool any() const noexcept { return meets(*this); }
    /// True when a group is marked in both.
    [[nodiscard]] bool meets(const GroupMarks& other) const noexcept;
};

} // namespace piolo
