// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/digits.h"

namespace piolo {

std::optional<std::int64_t> digitsOf(std::string_view text, std::size_t fewest, std::size_t most) noexcept {
    if (text.size() < fewest || text.size() > most) return std::nullopt;
    std::int64_t number = 0;
    for (const char digit : text) {
        if (digit < '0' || digit > '9') return std::nullopt;
        number = number * 10 + (digit - '0');
    }
    return number;
}

std::string padded(std::int64_t number, std::size_t width) {
    std::string digits = std::to_string(number);
    if (digits.size() < width) digits.insert(0, width - digits.size(), '0');
    return digits;
}

} // namespace piolo
