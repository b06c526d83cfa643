// SPDX-License-Identifier: GPL-3.0-or-later
// Splits a stretch of time into note values.
#pragma once

#include "score/write/note_value.h"
#include "score/write/tuplet_spans.h"

#include <cstdint>
#include <optional>
#include <vector>

namespace piolo::score {

struct ShapedTicks {
    NoteShape shape;
    std::int64_t ticks = 0;
};

/// The whole range as one value with at most two dots, if there is one.
[[nodiscard]] std::optional<NoteShape> oneShape(const TickRange& range, const TickGrid& grid);
/// At each point the longest value that would begin there in a bar filled with that value alone, or a whole
/// beat. Nothing if no note value is short enough.
[[nodiscard]] std::optional<std::vector<ShapedTicks>> split(TickRange range, const TickGrid& grid);

} // namespace piolo::score
