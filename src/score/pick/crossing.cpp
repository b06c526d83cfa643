// SPDX-License-Identifier: GPL-3.0-or-later
#include "score/pick/crossing.h"

#include "score/pick/tempo_in_force.h"

namespace piolo::score {

namespace {

/// True if the sign is at the outer edge of the stretch, where it has no effect.
bool standsAtEdge(SignKind sign, std::size_t bar, Stretch stretch) {
    switch (sign) {
    case SignKind::repeatBegins:
    case SignKind::endingBegins:
    case SignKind::codaBegins:
        return bar == stretch.first;
    case SignKind::repeatEnds:
    case SignKind::endingEnds:
    case SignKind::jump:
        return bar == stretch.last;
    }
    return false;
}

const char* nameOf(SignKind sign) {
    switch (sign) {
    case SignKind::repeatBegins:
    case SignKind::repeatEnds:
        return "repeat";
    case SignKind::endingBegins:
    case SignKind::endingEnds:
        return "ending";
    case SignKind::jump:
    case SignKind::codaBegins:
        return "jump";
    }
    return "";
}

} // namespace

std::optional<Fault> goesRound(const Part& part, Stretch stretch) {
    for (std::size_t bar = stretch.first; bar <= stretch.last; ++bar)
        for (const SignKind sign : part.bars[bar].signs)
            if (!standsAtEdge(sign, bar, stretch))
                return Fault{FaultNumber::barsGoRound, {}, {part.bars[bar].number, nameOf(sign)}};
    return std::nullopt;
}

std::optional<Fault> changes(const Score& score, const Part& part, Stretch stretch) {
    for (std::size_t bar = stretch.first + 1; bar <= stretch.last; ++bar)
        if (part.bars[bar].time != part.bars[stretch.first].time)
            return Fault{FaultNumber::barsChange, {}, {part.bars[bar].number, "meter"}};
    const TempoMark* before = markInForce(score, stretch.first);
    for (const TempoMark& mark : score.tempi) {
        if (!isInside(mark, stretch)) continue;
        if (!isSameTempo(before, mark))
            return Fault{FaultNumber::barsChange, {}, {part.bars[mark.bar].number, "tempo"}};
        before = &mark;
    }
    return std::nullopt;
}

} // namespace piolo::score
