// SPDX-License-Identifier: GPL-3.0-or-later
// The picture of a passage's music.
#pragma once

#include "core/base/fields.h"
#include "core/base/id.h"
#include "core/facts/fact_role.h"
#include "core/passage/picture.h"

#include <optional>
#include <string_view>

namespace piolo {

/// The picture of the passage's music; none: it has none any more.
struct PictureFact {
    static constexpr std::string_view kindName = "picture";
    static constexpr FactRole role = FactRole::edits;

    Id passage;
    std::optional<Picture> picture;
    bool operator==(const PictureFact&) const = default;
};

template <typename Fields>
void describe(Fields& in, PictureFact& fact) {
    in.field("passage", fact.passage);
    in.known("file", fact.picture.has_value(), [&] {
        if (!fact.picture) fact.picture.emplace();
        describe(in, *fact.picture);
    });
}

} // namespace piolo
