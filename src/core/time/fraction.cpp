// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/time/fraction.h"

#include "core/base/digits.h"

#include <numeric>

namespace piolo {

namespace {

constexpr std::size_t mostDigits = 3;

Fraction lowestTerms(std::int64_t numerator, std::int64_t denominator) noexcept {
    const std::int64_t common = std::gcd(numerator, denominator);
    return {static_cast<std::int32_t>(numerator / common), static_cast<std::int32_t>(denominator / common)};
}

} // namespace

Fraction Fraction::reduced() const noexcept { return lowestTerms(numerator, denominator); }

std::string Fraction::text() const { return std::to_string(numerator) + '/' + std::to_string(denominator); }

std::optional<Fraction> Fraction::parse(std::string_view text) {
    const std::size_t stroke = text.find('/');
    if (stroke == std::string_view::npos) return std::nullopt;
    const auto above = digitsOf(text.substr(0, stroke), 1, mostDigits);
    const auto below = digitsOf(text.substr(stroke + 1), 1, mostDigits);
    if (!above || !below || *below == 0) return std::nullopt;
    return Fraction{static_cast<std::int32_t>(*above), static_cast<std::int32_t>(*below)};
}

Fraction ratio(Fraction length, Fraction unit) noexcept {
    return lowestTerms(std::int64_t{length.numerator} * unit.denominator,
                       std::int64_t{length.denominator} * unit.numerator);
}

} // namespace piolo
