// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/time/fraction_sum.h"

#include <limits>
#include <numeric>

namespace piolo {

std::optional<Fraction> reducedFraction(std::int64_t numerator, std::int64_t denominator) noexcept {
    if (numerator < 0 || denominator < 1) return std::nullopt;
    constexpr std::int64_t most = std::numeric_limits<std::int32_t>::max();
    const std::int64_t common = std::gcd(numerator, denominator);
    if (numerator / common > most || denominator / common > most) return std::nullopt;
    return Fraction{static_cast<std::int32_t>(numerator / common),
                    static_cast<std::int32_t>(denominator / common)};
}

// Products of two 31-bit numbers, and the sum of two such products, fit into 63 bits.
std::optional<Fraction> sum(Fraction a, Fraction b) noexcept {
    return reducedFraction(std::int64_t{a.numerator} * b.denominator +
                               std::int64_t{b.numerator} * a.denominator,
                           std::int64_t{a.denominator} * b.denominator);
}

std::optional<Fraction> difference(Fraction a, Fraction b) noexcept {
    return reducedFraction(std::int64_t{a.numerator} * b.denominator -
                               std::int64_t{b.numerator} * a.denominator,
                           std::int64_t{a.denominator} * b.denominator);
}

std::weak_ordering order(Fraction a, Fraction b) noexcept {
    return std::int64_t{a.numerator} * b.denominator <=> std::int64_t{b.numerator} * a.denominator;
}

} // namespace piolo
