// SPDX-License-Identifier: GPL-3.0-or-later
// The path through a scale: which notes are played, in what order, and how it ends.
#pragma once

#include "core/scales/scale_ladder.h"

#include <vector>

namespace piolo {

/// The range of a path, as notes of the ladder. bottom <= 0 <= top.
struct ScaleReach {
    int bottom = 0;
    int top = 0;
    bool operator==(const ScaleReach&) const = default;
};

/// A note of the ladder and the direction in which it is passed.
struct WalkStep {
    int index = 0;
    Direction direction = Direction::up;
    bool operator==(const WalkStep&) const = default;
};

/// What was added so that the last note comes on a beat.
struct ScaleEnding {
    bool topTwice = false;   ///< the top note was played twice
    bool tonicTwice = false; ///< the last note was played twice
    int turn = 0; ///< number of notes of the turn below the last tonic (above it if negative), including the
                  ///< tonic
    bool operator==(const ScaleEnding&) const = default;
};

/// From the tonic to the top, down to the bottom, and back to the tonic. The figures of a pattern stay within
/// the reach; if it is too small for them, the notes are played in order.
[[nodiscard]] std::vector<WalkStep> walkOf(ScalePattern pattern, ScaleReach reach);

/// Lengthens a walk as players do, so that its last note is the first of a beat of `notesPerBeat`: if one
/// note is missing, the top note (in a pattern: the last tonic) is played twice; if two are missing, the
/// scale goes one note below the last tonic and comes back; if four, two notes; if six, three. If the
/// instrument does not have such a note (`lowest`, a note of the ladder), it turns above the tonic.
[[nodiscard]] ScaleEnding endOnBeat(std::vector<WalkStep>& walk, int notesPerBeat, ScalePattern pattern,
                                    int lowest);

} // namespace piolo
