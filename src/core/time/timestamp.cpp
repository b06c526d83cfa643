// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/time/timestamp.h"

#include "core/base/digits.h"

#include <algorithm>
#include <cstdlib>

namespace piolo {

namespace {

constexpr std::int64_t millisInMinute = 60'000;
constexpr std::int64_t minutesInDay = 1440;
constexpr std::int64_t millisInDay = minutesInDay * millisInMinute;
constexpr std::string_view dateShape = "2026-03-01";
constexpr std::string_view secondsShape = "18:04:05";

std::int64_t floorDivided(std::int64_t number, std::int64_t by) noexcept {
    return number / by - (number % by < 0 ? 1 : 0);
}

struct TimeOfDay {
    std::int64_t minute = 0;
    std::int64_t millis = 0; ///< within the minute; 60 000 or more in a leap second
};

std::optional<TimeOfDay> parseClock(std::string_view text) {
    if (text.size() != secondsShape.size() || text[2] != ':' || text[5] != ':') return std::nullopt;
    const auto hour = digitsOf(text.substr(0, 2), 2, 2);
    const auto minute = digitsOf(text.substr(3, 2), 2, 2);
    const auto second = digitsOf(text.substr(6, 2), 2, 2);
    if (!hour || !minute || !second || *hour > 23 || *minute > 59 || *second > 60) return std::nullopt;
    return TimeOfDay{*hour * 60 + *minute, *second * 1000};
}

/// Removes ".123456789" from the front of `text`: 0 to 9 decimal places, truncated to milliseconds.
std::optional<std::int64_t> takeDecimals(std::string_view& text) {
    if (text.empty() || text.front() != '.') return 0;
    const std::size_t end = std::min(text.find_first_not_of("0123456789", 1), text.size());
    const auto decimals = digitsOf(text.substr(1, end - 1), 1, 9);
    if (!decimals) return std::nullopt;
    std::int64_t millis = *digitsOf(text.substr(1, std::min<std::size_t>(3, end - 1)), 1, 3);
    for (std::size_t place = end - 1; place < 3; ++place) millis *= 10;
    text.remove_prefix(end);
    return millis;
}

std::optional<std::int16_t> parseOffset(std::string_view text) {
    if (text == "Z" || text == "z") return std::int16_t{0};
    if (text.size() != 6 || (text[0] != '+' && text[0] != '-') || text[3] != ':') return std::nullopt;
    const auto hours = digitsOf(text.substr(1, 2), 2, 2);
    const auto minutes = digitsOf(text.substr(4, 2), 2, 2);
    if (!hours || !minutes || *hours > 23 || *minutes > 59) return std::nullopt;
    const std::int64_t offset = *hours * 60 + *minutes;
    return static_cast<std::int16_t>(text[0] == '-' ? -offset : offset);
}

} // namespace

Date Timestamp::date() const noexcept {
    return Date::fromDaysSince1970(floorDivided(utcMillis + offsetMinutes * millisInMinute, millisInDay));
}

std::string Timestamp::text() const {
    const std::int64_t local = utcMillis + offsetMinutes * millisInMinute;
    const std::int64_t millis = local - floorDivided(local, millisInDay) * millisInDay;
    const std::int64_t offset = std::abs(std::int64_t{offsetMinutes});
    std::string text = date().text() + 'T' + padded(millis / 3'600'000, 2);
    text += ':' + padded(millis / millisInMinute % 60, 2);
    text += ':' + padded(millis / 1000 % 60, 2);
    text += '.' + padded(millis % 1000, 3);
    text += (offsetMinutes < 0 ? '-' : '+') + padded(offset / 60, 2);
    return text + ':' + padded(offset % 60, 2);
}

std::optional<Timestamp> Timestamp::parse(std::string_view text) {
    const std::size_t afterDate = dateShape.size();
    const std::size_t afterClock = afterDate + 1 + secondsShape.size();
    if (text.size() <= afterClock || (text[afterDate] != 'T' && text[afterDate] != 't')) return std::nullopt;
    const auto date = Date::parse(text.substr(0, afterDate));
    const auto clock = parseClock(text.substr(afterDate + 1, secondsShape.size()));
    std::string_view rest = text.substr(afterClock);
    const auto decimals = takeDecimals(rest);
    if (!decimals) return std::nullopt;
    const auto offset = parseOffset(rest);
    if (!date || !clock || !offset) return std::nullopt;
    const std::int64_t minute = date->daysSince1970() * minutesInDay + clock->minute - *offset;
    const bool leap = clock->millis == millisInMinute;
    const bool lastMinuteOfDay =
        minute - floorDivided(minute, minutesInDay) * minutesInDay == minutesInDay - 1;
    if (leap && !lastMinuteOfDay) return std::nullopt;
    const std::int64_t millis = std::min(clock->millis + *decimals, millisInMinute - 1);
    return Timestamp{minute * millisInMinute + millis, *offset};
}

} // namespace piolo
