// SPDX-License-Identifier: GPL-3.0-or-later
// Plain decimal digits in and out, without signs, spaces or locales.
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace piolo {

/// The number that `text` writes in `fewest` to `most` decimal digits and nothing else; `most` is at most 18.
[[nodiscard]] std::optional<std::int64_t> digitsOf(std::string_view text, std::size_t fewest,
                                                   std::size_t most) noexcept;
/// `number` (not negative) with zeros in front, at least `width` digits.
[[nodiscard]] std::string padded(std::int64_t number, std::size_t width);

} // namespace piolo
