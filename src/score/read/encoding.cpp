// SPDX-License-Identifier: GPL-3.0-or-later
#include "score/read/encoding.h"

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

} // namespace

Encoding encodingOf(std::string_view bytes) {
    if (bytes.starts_with("\xFF\xFE") || bytes.starts_with("\xFE\xFF")) return Encoding::utf16;
    if (bytes.size() > 1 && (bytes[0] == '\0' || bytes[1] == '\0')) return Encoding::utf16;
    const std::string name = declaredIn(bytes);
    if (name == "iso-8859-1" || name == "latin1") return Encoding::latin1;
    return name.empty() || name == "utf-8" || name == "utf8" || name == "us-ascii" ? Encoding::utf8
                                                                                   : Encoding::other;
}

std::string cutText(std::string_view text, std::size_t most) {
    if (text.size() <= most) return std::string(text);
    while (most > 0 && (text[most] & 0xC0) == 0x80) --most;
    return std::string(text.substr(0, most));
}

} // namespace piolo::score
