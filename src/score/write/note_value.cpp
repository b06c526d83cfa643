// SPDX-License-Identifier: GPL-3.0-or-later
#include "score/write/note_value.h"

#include "core/time/fraction_sum.h"

#include <cstdint>

namespace piolo::score {

std::optional<Fraction> dotted(Fraction value, long dots) noexcept {
    if (dots < 0 || dots > 4) return std::nullopt;
    const std::int64_t parts = std::int64_t{1} << dots;
    return reducedFraction(value.numerator * (2 * parts - 1), value.denominator * parts);
}

std::optional<NoteShape> shapeOf(Fraction length) noexcept {
    constexpr int mostDots = 2;
    for (const NoteValue& value : noteValues)
        for (int dots = 0; dots <= mostDots; ++dots)
            if (dotted(value.length, dots) == length.reduced()) return NoteShape{value.name, dots};
    return std::nullopt;
}

} // namespace piolo::score
