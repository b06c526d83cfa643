// SPDX-License-Identifier: GPL-3.0-or-later
// The values that order a line among the others, even if the rest of it is unusable.
#pragma once

#include "core/base/fields.h"
#include "core/base/result.h"
#include "core/history/fact.h"

#include <string>
#include <string_view>

namespace piolo::journal {

/// The end of the year 9999 in UTC: no clock can mean a later order.
inline constexpr std::int64_t mostOrder = 253'402'300'799'999;

/// Of a line that is valid JSON; values that are missing or out of range remain empty or 0.
struct LineHead {
    std::string device;
    std::uint64_t seq = 0;
    std::int64_t order = 0;
};

/// As fromLine(), but also fills `head` for facts of an unknown kind or a newer format.
Result<Fact> readLine(std::string_view line, const FaultLocation& location, LineHead& head);

} // namespace piolo::journal
