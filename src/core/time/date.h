// SPDX-License-Identifier: GPL-3.0-or-later
// A calendar day. No clock: text and values only.
#pragma once

#include "core/base/text_form.h"

#include <compare>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace piolo {

/// A day of the proleptic Gregorian calendar, years 1 to 9999. A Date made by these functions is always a
/// valid day.
struct Date {
    std::int16_t year = 1970;
    std::int8_t month = 1;
    std::int8_t day = 1;
    auto operator<=>(const Date&) const noexcept = default; // NOLINT(modernize-use-nullptr): no pointer

    [[nodiscard]] std::int64_t daysSince1970() const noexcept;
    static Date fromDaysSince1970(std::int64_t days) noexcept;
    /// "2026-03-01".
    [[nodiscard]] std::string text() const;
    static std::optional<Date> parse(std::string_view text);
};

template <>
struct TextForm<Date> {
    static std::string text(const Date& value) { return value.text(); }
    static std::optional<Date> parse(std::string_view text) { return Date::parse(text); }
};

} // namespace piolo
