// SPDX-License-Identifier: GPL-3.0-or-later
// The player's words about a run or tempo.
#pragma once

#include "core/base/fields.h"
#include "core/base/id.h"
#include "core/facts/fact_role.h"

#include <cstddef>
#include <string>
#include <string_view>

namespace piolo {

/// The player's words about a run or tempo of that passage; the newest hold, empty ones take them away.
struct NoteFact {
    static constexpr std::string_view kindName = "note";
    static constexpr FactRole role = FactRole::edits;
    static constexpr std::size_t longest = 500; ///< bytes of UTF-8

    Id passage;
    Id about;
    std::string text;
    bool operator==(const NoteFact&) const = default;
};

template <typename Fields>
void describe(Fields& in, NoteFact& fact) {
    in.field("passage", fact.passage);
    in.field("about", fact.about);
    in.field("text", fact.text, Longest{NoteFact::longest});
}

} // namespace piolo
