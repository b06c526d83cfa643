// SPDX-License-Identifier: GPL-3.0-or-later
// Twelve keys by seven subdivisions: what was played of one kind of scale.
#pragma once

#include "core/history/notebook.h"
#include "core/scales/scale_settings.h"

#include <array>
#include <optional>

namespace piolo {

/// One key in one subdivision.
struct ScaleCell {
    Id passage;                   ///< the passage played most recently; none: never created
    std::optional<Tempo> best;    ///< the highest of all passages in that cell
    Tempo tempo = Tempo::bpm(60); ///< the current tempo of that passage
    std::int32_t streak = 0;
    std::int32_t cleanRuns = 0;  ///< runs in a full streak; 0: never created
    std::optional<Date> lastDay; ///< when it was last played
    bool secure = false;         ///< secure on as many different days as the settings require
};

/// Indexed by notes per beat (1…7) and pitch class (0…11).
class ScaleGrid {
public:
    [[nodiscard]] ScaleCell& at(std::int32_t notesPerBeat, int key) {
        return cells_.at(place(notesPerBeat, key));
    }
    [[nodiscard]] const ScaleCell& at(std::int32_t notesPerBeat, int key) const {
        return cells_.at(place(notesPerBeat, key));
    }

private:
    static constexpr std::size_t cellCount = std::size_t{Scale::mostNotesPerBeat} * keyCount;
    [[nodiscard]] static std::size_t place(std::int32_t notesPerBeat, int key) noexcept {
        return static_cast<std::size_t>(notesPerBeat - 1) * keyCount + static_cast<std::size_t>(key);
    }
    std::array<ScaleCell, cellCount> cells_{};
};

/// The scales with that view for that instrument (as named in the settings, may be ""). Enharmonic names
/// share a cell. Removed passages are left out.
[[nodiscard]] ScaleGrid gridOf(const Notebook& notebook, const ScaleView& view, std::string_view instrument);

} // namespace piolo
