// SPDX-License-Identifier: GPL-3.0-or-later
// The passage used to drill a scale.
#pragma once

#include "core/scales/scale_part.h"
#include "core/scales/scale_proposal.h"

namespace piolo {

/// The instrument from the settings with the player's own range; the first of instruments() if none was
/// chosen.
struct Player {
    const Instrument* instrument = nullptr;
    NoteRange range;
};
[[nodiscard]] Player playerOf(const ScaleSettings& settings);

/// A passage with that id: bars and notes of the part, named textOf(scale), from the suggested start to the
/// target with the default steps.
[[nodiscard]] Passage scalePassage(Id id, const Scale& scale, const ScalePart& part,
                                   const StartProposal& tempi);

} // namespace piolo
