// SPDX-License-Identifier: GPL-3.0-or-later
// The way through a scale: which of its notes are played, in what order, and how it comes to its end.
#pragma once

#include "core/scales/scale_ladder.h"

#include <vector>

namespace piolo {

/// How far a way reaches, as notes of the ladder. bottom <= 0 <= top.
struct ScaleReach {
    int bottom = 0;
    int top = 0;
    bool operator==(const ScaleReach&) const = default;
};

/// A note of the ladder and the way in which it is passed.
struct WalkStep {
    int index = 0;
    Direction direction = Direction::up;
    bool operator==(const WalkStep&) const = default;
};

/// What was added so that the last note comes on a beat.
struct ScaleEnding {
    bool topTwice = false;   ///< the top note was played twice
    bool tonicTwice = false; ///< the last note was played twice
    int turn = 0; ///< notes of the turn under the last tonic, over it when negative; the tonic counts
    bool operator==(const ScaleEnding&) const = default;
};

/// From the tonic to the top, down to the bottom, and back to the tonic. A pattern's figures stay inside the
/// reach; where it is too small for them the notes are played in order.
[[nodiscard]] std::vector<WalkStep> walkOf(ScalePattern pattern, ScaleReach reach);

/// Lengthens a walk so that its last note is the first of a beat of `notesPerBeat`, as players do: where one
/// note is wanting the top note (in a pattern: the last tonic) is played twice; where two are wanting the
/// scale goes one note below the last tonic and comes back, where four, two notes, where six, three. Where
/// the instrument has no such note (`lowest`, a note of the ladder) it turns above the tonic.
[[nodiscard]] ScaleEnding endOnBeat(std::vector<WalkStep>& walk, int notesPerBeat, ScalePattern pattern,
                                    int lowest);

} // namespace piolo
