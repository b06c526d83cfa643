// SPDX-License-Identifier: GPL-3.0-or-later
// A passage: the values that the player edits, in the groups in which they are recorded.
#pragma once

#include "core/base/id.h"
#include "core/music/note.h"
#include "core/passage/click_pattern.h"
#include "core/passage/manner.h"
#include "core/passage/music.h"
#include "core/passage/tempi.h"
#include "core/passage/title.h"
#include "core/scales/scale.h"

#include <optional>
#include <vector>

namespace piolo {

struct Passage {
    static constexpr std::size_t mostNotes = 1500; ///< so that a line of the journal can hold them

    Id id;
    Title title;
    Music music;
    Tempi tempi;
    ClickPattern click{};         ///< how the click sounds while it is played
    Manner manner{};              ///< how it is played
    std::vector<Note> notes{};    ///< in the order of time; none: not known
    std::optional<Scale> scale{}; ///< the passage is this scale; none: it is music of another kind
    bool operator==(const Passage&) const = default;
};

} // namespace piolo
