// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/drill/rest_watch.h"

namespace piolo::practice {

std::int64_t RestWatch::played(std::int64_t nanos) const noexcept {
    return played_ + (plays_ ? nanos - since_ : 0);
}

void RestWatch::playing(bool plays, std::int64_t nanos) noexcept {
    if (plays == plays_) return;
    if (plays && nanos - since_ >= restNanos) played_ = 0;
    if (!plays) played_ += nanos - since_;
    plays_ = plays;
    since_ = nanos;
}

bool RestWatch::due(std::int64_t nanos) const noexcept {
    if (!plays_ && nanos - since_ >= restNanos) return false;
    return played(nanos) >= stretchNanos;
}

void RestWatch::dismiss(std::int64_t nanos) noexcept {
    played_ = 0;
    since_ = nanos;
}

} // namespace piolo::practice
