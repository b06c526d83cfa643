// SPDX-License-Identifier: GPL-3.0-or-later
// Twelve keys by seven subdivisions: what has been played of one kind of scale.
#pragma once

#include "core/history/notebook.h"
#include "core/scales/scale_settings.h"

#include <array>
#include <optional>

namespace piolo {

/// One key in one subdivision.
struct ScaleCell {
    Id passage;                   ///< the one played last; none: never made
    std::optional<Tempo> best;    ///< the highest of all passages of that cell
    Tempo tempo = Tempo::bpm(60); ///< where that passage stands
    std::int32_t streak = 0;
    std::int32_t cleanRuns = 0;  ///< of a full streak; 0: never made
    std::optional<Date> lastDay; ///< on which it was played
    bool secure = false;         ///< with as many secures on different days as the settings want
};

/// By notes to the beat (1…7) and pitch class (0…11).
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

/// The scales of that view which were made for that instrument (as named in the settings, also "").
/// Enharmonic names share a cell. Removed passages are left out.
[[nodiscard]] ScaleGrid gridOf(const Notebook& notebook, const ScaleView& view, std::string_view instrument);

} // namespace piolo
