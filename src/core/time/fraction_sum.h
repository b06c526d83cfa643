// SPDX-License-Identifier: GPL-3.0-or-later
// Exact addition and comparison of fractions of a whole note.
#pragma once

#include "core/time/fraction.h"

#include <compare>
#include <cstdint>
#include <optional>

namespace piolo {

/// In lowest terms. Nothing if it does not fit or is negative, or if `denominator` is not positive.
[[nodiscard]] std::optional<Fraction> reducedFraction(std::int64_t numerator,
                                                      std::int64_t denominator) noexcept;
/// a + b in lowest terms; nothing if it does not fit.
[[nodiscard]] std::optional<Fraction> sum(Fraction a, Fraction b) noexcept;
/// a - b in lowest terms; nothing if it does not fit or b is greater than a.
[[nodiscard]] std::optional<Fraction> difference(Fraction a, Fraction b) noexcept;
/// Compares by value: 2/4 is equivalent to 1/2.
[[nodiscard]] std::weak_ordering order(Fraction a, Fraction b) noexcept;

} // namespace piolo
