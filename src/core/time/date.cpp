// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/time/date.h"

#include "core/base/digits.h"

#include <algorithm>
#include <chrono> // the calendar alone; tests/tree checks that no clock is read here

namespace piolo {

namespace {

constexpr std::int64_t firstDay = -719'162; // 0001-01-01
constexpr std::int64_t lastDay = 2'932'896; // 9999-12-31

std::chrono::year_month_day calendarDay(const Date& date) noexcept {
    return {std::chrono::year{date.year}, std::chrono::month{static_cast<unsigned>(date.month)},
            std::chrono::day{static_cast<unsigned>(date.day)}};
}

} // namespace

std::int64_t Date::daysSince1970() const noexcept {
    return std::chrono::sys_days{calendarDay(*this)}.time_since_epoch().count();
}

Date Date::fromDaysSince1970(std::int64_t days) noexcept {
    const std::chrono::days since{std::clamp(days, firstDay, lastDay)};
    const std::chrono::year_month_day found{std::chrono::sys_days{since}};
    return {static_cast<std::int16_t>(static_cast<int>(found.year())),
            static_cast<std::int8_t>(static_cast<unsigned>(found.month())),
            static_cast<std::int8_t>(static_cast<unsigned>(found.day()))};
}

std::string Date::text() const { return padded(year, 4) + '-' + padded(month, 2) + '-' + padded(day, 2); }

std::optional<Date> Date::parse(std::string_view text) {
    if (text.size() != 10 || text[4] != '-' || text[7] != '-') return std::nullopt;
    const auto year = digitsOf(text.substr(0, 4), 4, 4);
    const auto month = digitsOf(text.substr(5, 2), 2, 2);
    const auto day = digitsOf(text.substr(8, 2), 2, 2);
    if (!year || !month || !day) return std::nullopt;
    const Date date{static_cast<std::int16_t>(*year), static_cast<std::int8_t>(*month),
                    static_cast<std::int8_t>(*day)};
    return *year >= 1 && calendarDay(date).ok() ? std::optional(date) : std::nullopt;
}

} // namespace piolo
