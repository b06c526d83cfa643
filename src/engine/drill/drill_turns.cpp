// SPDX-License-Identifier: GPL-3.0-or-later
// How the drill goes from one turn of a set to the next.
#include "engine/drill/drill.h"

namespace piolo::engine {

/// Returns the sample of the count-in.
std::uint64_t Drill::beginTurn() noexcept {
    if (!plan_.turn.follows || !watch_.isOver()) {
        history_.clear();
        runsWithoutKey_ = 0;
    }
    const auto countIn = tones_.begin(plan_.turn, now_, rate_);
    watch_.begin(plan_.turn, countIn, rate_);
    return countIn;
}

void Drill::endTurn(std::uint64_t sample) noexcept {
    mode_ = Mode::idle;
    history_.turnOver();
    auto sent = event(Event::Kind::stopped, sample);
    sent.turnOver = true;
    sender_.send(sent);
}

/// The standing stays: it is the next passage's, or soon will be.
void Drill::missEarlier(RunRecord& run) noexcept {
    run.mark = Mark::missed;
    ++runsEnded_;
    auto sent = event(Event::Kind::lateMiss, now_);
    sent.run = run.number;
    sent.tempo = run.grid.tempo;
    sent.mark = Mark::missed;
    sent.press = press_;
    sender_.send(sent);
}

} // namespace piolo::engine
