// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/clean_text.h"

#include <algorithm>
#include <cstddef>
#include <cstdint>

namespace piolo {

namespace {

/// The number of bytes of the character that begins with this one.
std::size_t lengthOf(unsigned char first) noexcept {
    if (first < 0x80) return 1;
    if (first < 0xE0) return 2;
    return first < 0xF0 ? 3 : 4;
}

char32_t characterIn(std::string_view bytes) noexcept {
    constexpr unsigned payload = 0x3F;
    const auto first = static_cast<unsigned char>(bytes.front());
    if (bytes.size() == 1) return first;
    char32_t character = first & (0xFFU >> (bytes.size() + 1));
    for (const char byte : bytes.substr(1))
        character = character << 6U | (static_cast<unsigned char>(byte) & payload);
    return character;
}

bool isText(char32_t c) noexcept {
    if (c == U'\t' || c == U'\n') return true;
    const bool control = c < 0x20 || (c >= 0x7F && c < 0xA0);
    const bool noncharacter = (c >= 0xFDD0 && c <= 0xFDEF) || (c & 0xFFFEU) == 0xFFFE;
    return !control && !noncharacter;
}

} // namespace

std::string cleanText(std::string_view text) {
    const bool plain = std::all_of(text.begin(), text.end(), [](char c) { return c >= 0x20 && c < 0x7F; });
    if (plain) return std::string(text);
    std::string clean;
    clean.reserve(text.size());
    while (!text.empty()) {
        const std::size_t length = std::min(lengthOf(static_cast<unsigned char>(text.front())), text.size());
        if (isText(characterIn(text.substr(0, length)))) clean += text.substr(0, length);
        text.remove_prefix(length);
    }
    return clean;
}

} // namespace piolo
