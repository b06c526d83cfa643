// SPDX-License-Identifier: GPL-3.0-or-later
// Which tempo mark applies where, and its tempo in a meter's beat.
#pragma once

#include "core/time/meter.h"
#include "core/time/tempo.h"
#include "score/pick/excerpt.h"
#include "score/read/score.h"

#include <optional>

namespace piolo::score {

/// The last mark at or before the beginning of a bar; null if there is none.
[[nodiscard]] const TempoMark* markInForce(const Score& score, std::size_t bar);
/// After the first moment of the stretch and before its end.
[[nodiscard]] bool isInside(const TempoMark& mark, Stretch stretch);
/// True if both marks have the same speed. A mark without a speed (one that only relates two beats) never
/// equals another.
[[nodiscard]] bool isSameTempo(const TempoMark* before, const TempoMark& mark);
/// The beat printed in the mark, if a passage can be counted in it.
[[nodiscard]] std::optional<BeatUnit> printedBeat(const TempoMark& mark);
/// The tempo in beats of `beat`, rounded to thousandths; a printed tempo takes precedence over the sounding
/// one. Nothing if the mark has no number or its number is not a valid tempo.
[[nodiscard]] std::optional<Tempo> tempoIn(const TempoMark& mark, BeatUnit beat);

} // namespace piolo::score
