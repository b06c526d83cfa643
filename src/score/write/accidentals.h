// SPDX-License-Identifier: GPL-3.0-or-later
// Which accidentals the notes of a part need.
#pragma once

#include "core/music/note.h"

#include <array>
#include <cstdint>
#include <optional>
#include <string_view>

namespace piolo::score {

/// An accidental is valid to the end of its bar, for its own line or space only. Use one object per part and
/// ask note by note.
class Accidentals {
public:
    explicit Accidentals(std::int32_t fifths) noexcept : fifths_(fifths) { beginBar(); }

    void beginBar() noexcept;
    /// MusicXML's accidental-value ("sharp", "flat-flat"); nothing if no accidental is needed. `tied`: the
    /// note continues the previous one, so it needs no accidental and does not affect later notes.
    [[nodiscard]] std::optional<std::string_view> before(WrittenPitch pitch, bool tied) noexcept;

private:
    std::int32_t fifths_;
    std::array<std::array<std::int8_t, 7>, 10> alters_{}; ///< by octave and step, from A
};

} // namespace piolo::score
