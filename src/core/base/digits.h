// SPDX-License-Identifier: GPL-3.0-or-later
// Reads and writes plain decimal digits, without signs, spaces or locales.
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace piolo {

/// Reads `fewest` to `most` decimal digits and nothing else as a number; `most` is at most 18.
[[nodiscard]] std::optional<std::int64_t> digitsOf(std::string_view text, std::size_t fewest,
                                                   std::size_t most) noexcept;
/// `number` (not negative) padded with leading zeros to at least `width` digits.
[[nodiscard]] std::string padded(std::int64_t number, std::size_t width);

} // namespace piolo
