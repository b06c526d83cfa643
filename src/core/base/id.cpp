// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/id.h"

#include <array>

namespace piolo {

namespace {

constexpr std::size_t digitsOfHalf = 16;
constexpr std::string_view hexDigits = "0123456789abcdef";

void append(std::string& text, std::uint64_t half) {
    for (int shift = 60; shift >= 0; shift -= 4)
        text += hexDigits[(half >> static_cast<unsigned>(shift)) & 0xF];
}

constexpr std::uint8_t noDigit = 0xFF;

// A table by character: reading ten years of journals looks up fifty million digits.
constexpr std::array<std::uint8_t, 256> valuesOfDigits() {
    std::array<std::uint8_t, 256> values{};
    values.fill(noDigit);
    for (std::uint8_t value = 0; value < 16; ++value) {
        const auto digit = static_cast<std::uint8_t>(hexDigits[value]);
        values[digit] = value;
        if (value >= 10) values[digit - 'a' + 'A'] = value;
    }
    return values;
}

constexpr auto digitValues = valuesOfDigits();

std::optional<std::uint64_t> parseHalf(std::string_view text) {
    std::uint64_t half = 0;
    std::uint8_t all = 0;
    for (const char digit : text) {
        const std::uint8_t value = digitValues[static_cast<std::uint8_t>(digit)];
        all |= value;
        half = (half << 4U) | value;
    }
    if (all > 0xF) return std::nullopt;
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
