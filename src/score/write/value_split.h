// SPDX-License-Identifier: GPL-3.0-or-later
// A stretch of time as the note values that fill it.
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
/// The longest values that begin where they would in a bar of nothing but them, and whole beats. Nothing when
/// no note value is short enough.
[[nodiscard]] std::optional<std::vector<ShapedTicks>> split(TickRange range, const TickGrid& grid);

} // namespace piolo::score
