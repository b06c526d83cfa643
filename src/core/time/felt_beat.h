// SPDX-License-Identifier: GPL-3.0-or-later
// The same speed felt in another beat: quarter = 60 is eighth = 120.
#pragma once

#include "core/base/result.h"
#include "core/history/fact.h"
#include "core/passage/passage.h"

#include <optional>

namespace piolo {

/// The factor from beats per minute in one beat to those in another, in lowest terms.
using SpeedRatio = Fraction;
[[nodiscard]] SpeedRatio speedRatio(BeatUnit from, BeatUnit to) noexcept;
/// Nothing if the result is not a whole number of thousandths or not within 10 to 400 BPM.
[[nodiscard]] std::optional<Tempo> exactlyAt(Tempo tempo, SpeedRatio ratio) noexcept;
/// The nearest Tempo (halves round up): for past tempi that are only displayed.
[[nodiscard]] Tempo nearestAt(Tempo tempo, SpeedRatio ratio) noexcept;
/// The same place in a bar counted in beats, of which there are `ratio` times as many; rounded down to
/// thousandths.
[[nodiscard]] Spot spotAt(Spot spot, SpeedRatio ratio) noexcept;

/// A passage felt in another beat, and its current tempo in that beat.
struct FeltPassage {
    Passage passage;
    Tempo tempo = Tempo::bpm(60);
};

/// Converts tempi, steps, subdivision and breath places exactly, and the breath between runs to the nearest
/// beat, at most 8. Fault cannotFeel (with an empty location) names the one value that prevents it, by its
/// key in the journal: "meter", "subdivision", "start", "target", "floor", "tempo", "drop", "climb",
/// "accents", "on", "breaths" or "breathBelow". Steps in notches are kept and must lead to the same speeds on
/// all rungs between floor and target; otherwise "step".
Result<FeltPassage> feltIn(const Passage& passage, Tempo present, BeatUnit beat);

} // namespace piolo
