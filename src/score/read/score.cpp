// SPDX-License-Identifier: GPL-3.0-or-later
#include "score/read/score.h"

namespace piolo::score {

std::string TimeSignature::text() const {
    if (!counted) return "-";
    std::string above;
    for (const int group : groups) above += (above.empty() ? "" : "+") + std::to_string(group);
    if (above.empty()) above = std::to_string(beats);
    return above + '/' + std::to_string(beatType);
}

} // namespace piolo::score
