// SPDX-License-Identifier: GPL-3.0-or-later
// A moment with the local date where it was recorded. No clock: text and values only.
#pragma once

#include "core/time/date.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace piolo {

/// Milliseconds of UTC since 1970, and the local offset in minutes (-1439…1439).
struct Timestamp {
    std::int64_t utcMillis = 0;
    std::int16_t offsetMinutes = 0;
    bool operator==(const Timestamp&) const noexcept = default;

    /// The local date as recorded.
    [[nodiscard]] Date date() const noexcept;
    /// RFC 3339 with milliseconds and offset: "2026-03-01T18:04:05.123+01:00" ("+00:00" for UTC).
    [[nodiscard]] std::string text() const;
    /// Reads RFC 3339, including "Z", lower-case 't' and 'z', and 0 to 9 decimal places (truncated to
    /// milliseconds). A leap second (":60" in the last minute of a UTC day) is read as the last millisecond
    /// before it ends.
    static std::optional<Timestamp> parse(std::string_view text);
};

} // namespace piolo
