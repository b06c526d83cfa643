// SPDX-License-Identifier: GPL-3.0-or-later
// A passage made or edited.
#pragma once

#include "core/facts/fact_role.h"
#include "core/passage/passage.h"

#include <optional>
#include <string_view>
#include <vector>

namespace piolo {

/// A passage was made or edited: only the groups that changed.
struct PassageFact {
    static constexpr std::string_view kindName = "passage";
    static constexpr FactRole role = FactRole::edits;

    Id passage;
    std::optional<Title> title;
    std::optional<Music> music;
    std::optional<Tempi> tempi;
    std::optional<ClickPattern> click{};
    std::optional<Manner> manner{};
    std::optional<std::vector<Note>> notes{};
    std::optional<Scale> scale{}; ///< once a passage is a scale it stays one
    bool imported = false;        ///< taken from a passage file, not edited by hand
    bool operator==(const PassageFact&) const = default;
};

} // namespace piolo
