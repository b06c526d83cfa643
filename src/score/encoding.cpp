// SPDX-License-Identifier: GPL-3.0-or-later
#include "score/encoding.h"

#include <algorithm>
#include <cctype>

namespace piolo::score {

namespace {

constexpr std::size_t longestDeclaration = 200;

std::string declaredIn(std::string_view bytes) {
    const auto end = bytes.substr(0, longestDeclaration).find("?>");
    if (!bytes.starts_with("<?xml") || end == std::string_view::npos) return {};
    const auto declaration = bytes.substr(0, end);
    const auto key = declaration.find("encoding");
    const auto open = key == std::string_view::npos ? key : declaration.find_first_of("\"'", key);
    if (open == std::string_view::npos) return {};
    const auto close = declaration.find(declaration[open], open + 1);
    std::string name(declaration.substr(open + 1, close == std::string_view::npos ? 0 : close - open - 1));
    std::ranges::transform(name, name.begin(), [](unsigned char c) { return std::tolower(c); });
    return name;
}

bool isContinued(std::string_view bytes, std::size_t at, std::size_t count) noexcept {
    if (bytes.size() - at <= count) return false;
    return std::ranges::all_of(bytes.substr(at + 1, count), [](char c) { return (c & 0xC0) == 0x80; });
}

/// Bytes of the character that begins there; 0: none does.
std::size_t characterAt(std::string_view bytes, std::size_t at) noexcept {
    const auto lead = static_cast<unsigned char>(bytes[at]);
    if (lead < 0x80) return 1;
    const std::size_t more = lead < 0xC2 ? 0 : lead < 0xE0 ? 1 : lead < 0xF0 ? 2 : lead < 0xF5 ? 3 : 0;
    if (more == 0 || !isContinued(bytes, at, more)) return 0;
    const auto second = static_cast<unsigned char>(bytes[at + 1]);
    const bool overlong = (lead == 0xE0 && second < 0xA0) || (lead == 0xF0 && second < 0x90);
    const bool surrogate = lead == 0xED && second > 0x9F;
    return overlong || surrogate || (lead == 0xF4 && second > 0x8F) ? 0 : more + 1;
}

} // namespace

Encoding encodingOf(std::string_view bytes) {
    if (bytes.starts_with("\xFF\xFE") || bytes.starts_with("\xFE\xFF")) return Encoding::utf16;
    if (bytes.size() > 1 && (bytes[0] == '\0' || bytes[1] == '\0')) return Encoding::utf16;
    const std::string name = declaredIn(bytes);
    if (name == "iso-8859-1" || name == "latin1") return Encoding::latin1;
    return name.empty() || name == "utf-8" || name == "utf8" || name == "us-ascii" ? Encoding::utf8
                                                                                   : Encoding::other;
}

std::size_t firstNotUtf8(std::string_view bytes) noexcept {
    for (std::size_t at = 0; at < bytes.size();) {
        const std::size_t length = characterAt(bytes, at);
        if (length == 0) return at;
        at += length;
    }
    return std::string_view::npos;
}

std::string cutText(std::string_view text, std::size_t most) {
    if (text.size() <= most) return std::string(text);
    while (most > 0 && (text[most] & 0xC0) == 0x80) --most;
    return std::string(text.substr(0, most));
}

} // namespace piolo::score
