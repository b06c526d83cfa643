// SPDX-License-Identifier: GPL-3.0-or-later
// A passage's title.
#pragma once

#include "core/base/fields.h"
#include "core/base/id.h"

#include <string>

namespace piolo {

/// A passage's name, the piece it belongs to (none: an exercise of its own), and the passage it was made of
/// (none: of no other).
struct Title {
    std::string name;
    Id piece;
    Id origin{};
    bool operator==(const Title&) const = default;
};

template <typename Fields>
void describe(Fields& in, Title& title) {
    in.field("name", title.name, Name{});
    unlessUsual(in, "piece", title.piece, {});
    unlessUsual(in, "origin", title.origin, {});
}

} // namespace piolo
