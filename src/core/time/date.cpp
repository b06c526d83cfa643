// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/digits.h"
#include "core/time/timestamp.h"

#include <algorithm>
#include <array>

namespace piolo {

namespace {

constexpr std::int64_t daysIn400Years = 146'097;
constexpr std::int64_t firstDay = -719'162; // 0001-01-01
constexpr std::int64_t lastDay = 2'932'896; // 9999-12-31

constexpr bool isLeap(std::int64_t year) noexcept {
    return year % 4 == 0 && (year % 100 != 0 || year % 400 == 0);
}

constexpr std::int64_t daysInMonth(std::int64_t year, std::int64_t month) noexcept {
    constexpr std::array<std::int64_t, 12> usual{31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
    return usual[static_cast<std::size_t>(month - 1)] + (month == 2 && isLeap(year) ? 1 : 0);
}

/// Days from 0001-01-01 to 1 January of `year`.
constexpr std::int64_t daysBeforeYear(std::int64_t year) noexcept {
    const std::int64_t past = year - 1;
    return past * 365 + past / 4 - past / 100 + past / 400;
}

} // namespace

std::int64_t Date::daysSince1970() const noexcept {
    std::int64_t days = daysBeforeYear(year);
    for (std::int64_t past = 1; past < month; ++past) days += daysInMonth(year, past);
    return firstDay + days + day - 1;
}

Date Date::fromDaysSince1970(std::int64_t days) noexcept {
    const std::int64_t since = std::clamp(days, firstDay, lastDay) - firstDay;
    // Dividing by the mean length of a year is off by at most one year.
    std::int64_t year = since * 400 / daysIn400Years + 1;
    if (daysBeforeYear(year + 1) <= since) ++year;
    if (daysBeforeYear(year) > since) --year;
    std::int64_t rest = since - daysBeforeYear(year);
    std::int64_t month = 1;
    for (; rest >= daysInMonth(year, month); ++month) rest -= daysInMonth(year, month);
    return {static_cast<std::int16_t>(year), static_cast<std::int8_t>(month),
            static_cast<std::int8_t>(rest + 1)};
}

std::string Date::text() const { return padded(year, 4) + '-' + padded(month, 2) + '-' + padded(day, 2); }

std::optional<Date> Date::parse(std::string_view text) {
    if (text.size() != 10 || text[4] != '-' || text[7] != '-') return std::nullopt;
    const auto year = digitsOf(text.substr(0, 4), 4, 4);
    const auto month = digitsOf(text.substr(5, 2), 2, 2);
    const auto day = digitsOf(text.substr(8, 2), 2, 2);
    if (!year || !month || !day || *year < 1 || *month < 1 || *month > 12) return std::nullopt;
    if (*day < 1 || *day > daysInMonth(*year, *month)) return std::nullopt;
    return Date{static_cast<std::int16_t>(*year), static_cast<std::int8_t>(*month),
                static_cast<std::int8_t>(*day)};
}

} // namespace piolo
