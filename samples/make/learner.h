// SPDX-License-Identifier: GPL-3.0-or-later
// The player and one passage: how likely a clean run is, and how that improves. Integers only.
#pragma once

#include "programme.h"

namespace piolo::samples {

class Learner {
public:
    explicit Learner(const Difficulty& difficulty);

    /// Clean runs per thousand at this tempo. `form`: how far today differs, in thousandths of the tempo.
    [[nodiscard]] std::int64_t cleanPerMille(Tempo tempo, std::int64_t form) const;
    /// One run was played.
    void played(Date date);
    /// A night has passed after `date`.
    void slept(Date date);

private:
    [[nodiscard]] bool onPlateau(Date date) const;

    Difficulty difficulty_;
    std::int64_t even_;
    bool playedToday_ = false;
};

} // namespace piolo::samples
