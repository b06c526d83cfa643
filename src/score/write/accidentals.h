// SPDX-License-Identifier: GPL-3.0-or-later
// Which sharps, flats and naturals stand before the notes of a part.
#pragma once

#include "core/music/note.h"

#include <array>
#include <cstdint>
#include <optional>
#include <string_view>

namespace piolo::score {

/// Signs count to the end of their bar, each for its own line or space. Of one part, note by note.
class Accidentals {
public:
    explicit Accidentals(std::int32_t fifths) noexcept : fifths_(fifths) { beginBar(); }

    void beginBar() noexcept;
    /// accidental-value of MusicXML ("sharp", "flat-flat"); nothing when no sign is needed. `tied`: the note
    /// goes on from the one before, whose sign counts for it alone.
    [[nodiscard]] std::optional<std::string_view> before(WrittenPitch pitch, bool tied) noexcept;

private:
    std::int32_t fifths_;
    std::array<std::array<std::int8_t, 7>, 10> alters_{}; ///< by octave and step, from A
};

} // namespace piolo::score
