// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/utf8.h"

#include <cstdint>

namespace piolo {

namespace {

struct Lead {
    std::size_t following; ///< number of bytes after this one
    std::uint8_t least;    ///< range of the first of them
    std::uint8_t most;
};

constexpr Lead invalid{0, 1, 0};

constexpr Lead leadOf(std::uint8_t byte) noexcept {
    if (byte < 0x80) return {0, 0, 0};
    if (byte < 0xC2) return invalid;
    if (byte < 0xE0) return {1, 0x80, 0xBF};
    if (byte == 0xE0) return {2, 0xA0, 0xBF};
    if (byte == 0xED) return {2, 0x80, 0x9F};
    if (byte < 0xF0) return {2, 0x80, 0xBF};
    if (byte == 0xF0) return {3, 0x90, 0xBF};
    if (byte < 0xF4) return {3, 0x80, 0xBF};
    if (byte == 0xF4) return {3, 0x80, 0x8F};
    return invalid;
}

/// The length in bytes of the character that begins there; 0 if none does.
std::size_t characterAt(std::string_view bytes, std::size_t at) noexcept {
    const Lead lead = leadOf(static_cast<std::uint8_t>(bytes[at]));
    if (lead.least > lead.most || lead.following >= bytes.size() - at) return 0;
    for (std::size_t i = 1; i <= lead.following; ++i) {
        const auto byte = static_cast<std::uint8_t>(bytes[at + i]);
        if (byte < (i == 1 ? lead.least : 0x80) || byte > (i == 1 ? lead.most : 0xBF)) return 0;
    }
    return lead.following + 1;
}

} // namespace

std::size_t firstNotUtf8(std::string_view bytes) noexcept {
    for (std::size_t at = 0; at < bytes.size();) {
        const std::size_t length = characterAt(bytes, at);
        if (length == 0) return at;
        at += length;
    }
    return std::string_view::npos;
}

} // namespace piolo
