// SPDX-License-Identifier: GPL-3.0-or-later
// Which tempo mark counts where, and what it is in a meter's beat.
#pragma once

#include "core/time/meter.h"
#include "core/time/tempo.h"
#include "score/pick/excerpt.h"
#include "score/read/score.h"

#include <optional>

namespace piolo::score {

/// The last mark at or before the beginning of a bar. Null: none.
[[nodiscard]] const TempoMark* markInForce(const Score& score, std::size_t bar);
/// After the first moment of the stretch, and before its end.
[[nodiscard]] bool isInside(const TempoMark& mark, Stretch stretch);
/// The same speed, or no speed at all (a mark that only says how two beats meet never is).
[[nodiscard]] bool isSameTempo(const TempoMark* before, const TempoMark& mark);
/// The beat that the mark prints, where a passage can be counted in it.
[[nodiscard]] std::optional<BeatUnit> printedBeat(const TempoMark& mark);
/// In beats of `beat`, to the nearest thousandth; what is printed counts before what sounds. Nothing when the
/// mark has no number, or one that is no Tempo.
[[nodiscard]] std::optional<Tempo> tempoIn(const TempoMark& mark, BeatUnit beat);

} // namespace piolo::score
