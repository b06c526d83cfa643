// SPDX-License-Identifier: GPL-3.0-or-later
// The player says that a device's clock was wrong.
#pragma once

#include "core/base/fields.h"
#include "core/base/id.h"
#include "core/facts/fact_role.h"
#include "core/time/date.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace piolo {

/// A device's id, as a text.
struct DeviceText {
    static std::string text(const std::string& device) { return device; }
    static std::optional<std::string> parse(std::string_view text) {
        const auto id = Id::parse(text);
        return id && !id->isNone() ? std::optional(id->text()) : std::nullopt;
    }
};

/// What the device recorded with a local date in from…to, up to its fact number `until`, happened `days` days
/// later (earlier if negative). Of several that apply to a fact, the last one in the order decides; the order
/// of the facts stays what it is. What would leave the years 1 to 9999 keeps its date.
struct ClockFact {
    static constexpr std::string_view kindName = "clock";
    static constexpr FactRole role = FactRole::elsewhere;
    static constexpr Range dayRange{-3'652'058, 3'652'058}; // from 9999-12-31 back to 0001-01-01

    std::string of; ///< 32 hexadecimal digits
    Date from;
    Date to;
    std::uint64_t until = 0;
    std::int32_t days = 0;
    bool operator==(const ClockFact&) const = default;
};

template <typename Fields>
void describe(Fields& in, ClockFact& fact) {
    in.field("of", fact.of, DeviceText{});
    in.field("from", fact.from);
    in.field("to", fact.to);
    in.field("until", fact.until, exactCount);
    in.field("days", fact.days, ClockFact::dayRange);
    in.check(fact.from <= fact.to, "to");
}

} // namespace piolo
