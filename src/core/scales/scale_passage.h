// SPDX-License-Identifier: GPL-3.0-or-later
// The passage with which a scale is drilled.
#pragma once

#include "core/scales/scale_part.h"
#include "core/scales/scale_proposal.h"

namespace piolo {

/// The instrument of the settings with the player's own range; the first of instruments() where none was
/// chosen.
struct Player {
    const Instrument* instrument = nullptr;
    NoteRange range;
};
[[nodiscard]] Player playerOf(const ScaleSettings& settings);

/// The passage of that id: the part's bars and notes, named by textOf(scale), from the start proposed to the
/// target, in steps of the usual rule.
[[nodiscard]] Passage scalePassage(Id id, const Scale& scale, const ScalePart& part,
                                   const StartProposal& tempi);

} // namespace piolo
