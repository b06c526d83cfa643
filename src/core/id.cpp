// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/id.h"

namespace piolo {

namespace {

constexpr std::size_t digitsOfHalf = 16;
constexpr std::string_view hexDigits = "0123456789abcdef";

void append(std::string& text, std::uint64_t half) {
    for (int shift = 60; shift >= 0; shift -= 4)
        text += hexDigits[(half >> static_cast<unsigned>(shift)) & 0xF];
}

std::optional<std::uint64_t> valueOf(char digit) {
    if (digit >= '0' && digit <= '9') return static_cast<std::uint64_t>(digit - '0');
    if (digit >= 'a' && digit <= 'f') return static_cast<std::uint64_t>(digit - 'a' + 10);
    if (digit >= 'A' && digit <= 'F') return static_cast<std::uint64_t>(digit - 'A' + 10);
    return std::nullopt;
}

std::optional<std::uint64_t> parseHalf(std::string_view text) {
    std::uint64_t half = 0;
    for (const char digit : text) {
        const auto value = valueOf(digit);
        if (!value) return std::nullopt;
        half = (half << 4U) | *value;
    }
    return half;
}

} // namespace

std::string Id::text() const {
    std::string text;
    append(text, high);
    append(text, low);
    return text;
}

std::optional<Id> Id::parse(std::string_view text) {
    if (text.size() != 2 * digitsOfHalf) return std::nullopt;
    const auto high = parseHalf(text.substr(0, digitsOfHalf));
    const auto low = parseHalf(text.substr(digitsOfHalf));
    if (!high || !low) return std::nullopt;
    return Id{*high, *low};
}

} // namespace piolo
