// SPDX-License-Identifier: GPL-3.0-or-later
// One speed felt in another beat: quarter = 60 and eighth = 120.
#pragma once

#include "core/base/result.h"
#include "core/history/fact.h"
#include "core/passage/passage.h"

#include <optional>

namespace piolo {

/// The factor from beats per minute in one beat to those in another, in lowest terms.
using SpeedRatio = Fraction;
[[nodiscard]] SpeedRatio speedRatio(BeatUnit from, BeatUnit to) noexcept;
/// Nothing when it is no whole number of thousandths, or not in 10 to 400 BPM.
[[nodiscard]] std::optional<Tempo> exactlyAt(Tempo tempo, SpeedRatio ratio) noexcept;
/// The nearest Tempo (halves up): for what is over and only shown.
[[nodiscard]] Tempo nearestAt(Tempo tempo, SpeedRatio ratio) noexcept;
/// The same place in a bar counted in beats that are `ratio` as many; nearest thousandth below.
[[nodiscard]] Spot spotAt(Spot spot, SpeedRatio ratio) noexcept;

/// A passage felt in another beat, and its present tempo there.
struct FeltPassage {
    Passage passage;
    Tempo tempo = Tempo::bpm(60);
};

/// Tempi, steps, subdivision and breath places are converted exactly; the breath between runs to the nearest
/// beat, at most 8. Fault cannotFeel (place empty) with the one thing that stands in the way, by its key in
/// the journal: "meter", "subdivision", "start", "target", "floor", "tempo", "drop", "climb", "accents",
/// "on", "breaths" or "breathBelow". In notches the steps stay, and must lead to the same speeds from one
/// rung to the next between floor and target: else "step".
Result<FeltPassage> feltIn(const Passage& passage, Tempo present, BeatUnit beat);

} // namespace piolo
