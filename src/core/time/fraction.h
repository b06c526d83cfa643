// SPDX-License-Identifier: GPL-3.0-or-later
// A small non-negative fraction of a whole note, such as a beat unit or a pick-up.
#pragma once

#include "core/base/text_form.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace piolo {

/// numerator/denominator; equality compares the values as written. 0 <= numerator, 1 <= denominator.
struct Fraction {
    std::int32_t numerator = 0;
    std::int32_t denominator = 1;

    constexpr bool operator==(const Fraction&) const noexcept = default;
    /// In lowest terms.
    [[nodiscard]] Fraction reduced() const noexcept;
    [[nodiscard]] bool isZero() const noexcept { return numerator == 0; }
    /// "3/8".
    [[nodiscard]] std::string text() const;
    /// Reads "3/8"; both numbers 0 to 999, the denominator at least 1.
    static std::optional<Fraction> parse(std::string_view text);
};

/// How many times `unit` fits into `length`, as a fraction in lowest terms. `unit` must not be zero.
Fraction ratio(Fraction length, Fraction unit) noexcept;

template <>
struct TextForm<Fraction> {
    static std::string text(const Fraction& value) { return value.text(); }
    static std::optional<Fraction> parse(std::string_view text) { return Fraction::parse(text); }
};

} // namespace piolo
