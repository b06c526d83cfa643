// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/log/take_backs.h"

#include <utility>

namespace piolo::practice {

// It is kept before the book says that it has changed, so that whoever asks then is told of it.
void TakeBacks::take(Id subject, Id fact) {
    if (book_.readOnly()) return;
    if (auto taken = takenBack(book_.notebook(), subject, fact)) taken_.push_back(*std::move(taken));
    book_.record(BackFact{subject, fact});
}

void TakeBacks::discard(Tempo byHand) {
    taken_.push_back({TakenBack::What::tempo, byHand, Mark::clean, {}, 1, {}});
}

std::optional<TakenBack> TakeBacks::putBack() {
    if (taken_.empty() || book_.readOnly()) return std::nullopt;
    TakenBack last = std::move(taken_.back());
    taken_.pop_back();
    if (last.putsBack) book_.record(*last.putsBack);
    return last;
}

} // namespace piolo::practice
