// SPDX-License-Identifier: GPL-3.0-or-later
// A 128-bit random identifier. Callers supply the randomness: core has none.
#pragma once

#include <compare>
#include <cstddef>
#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <string_view>

namespace piolo {

struct Id {
    std::uint64_t high = 0;
    std::uint64_t low = 0;
    auto operator<=>(const Id&) const noexcept = default; // NOLINT(modernize-use-nullptr): no pointer

    /// All bits zero: no id.
    [[nodiscard]] bool isNone() const noexcept { return high == 0 && low == 0; }
    /// 32 lower-case hexadecimal digits.
    [[nodiscard]] std::string text() const;
    /// Reads 32 hexadecimal digits in either case.
    static std::optional<Id> parse(std::string_view text);
};

} // namespace piolo

template <>
struct std::hash<piolo::Id> {
    std::size_t operator()(const piolo::Id& id) const noexcept {
        return static_cast<std::size_t>(id.high ^ (id.low * 0x9E3779B97F4A7C15ULL));
    }
};
