// SPDX-License-Identifier: GPL-3.0-or-later
// Integers as bytes in a fixed byte order, independent of the machine's own.
#pragma once

#include <cstddef>
#include <cstdint>
#include <span>
#include <vector>

namespace piolo::files {

using Bytes = std::vector<std::uint8_t>;

/// Appends the lowest `count` (1…4) bytes of `value`, least significant first.
inline void putLittle(Bytes& out, std::uint32_t value, int count) {
    for (int i = 0; i < count; ++i) out.push_back(static_cast<std::uint8_t>(value >> (8 * i)));
}
/// Appends the lowest `count` (1…4) bytes of `value`, most significant first.
inline void putBig(Bytes& out, std::uint32_t value, int count) {
    for (int i = count - 1; i >= 0; --i) out.push_back(static_cast<std::uint8_t>(value >> (8 * i)));
}
/// Reads `count` (1…4) bytes, least significant first. `from` must contain them.
inline std::uint32_t getLittle(std::span<const std::uint8_t> from, std::size_t at, int count) {
    std::uint32_t value = 0;
    for (int i = count - 1; i >= 0; --i) value = (value << 8) | from[at + static_cast<std::size_t>(i)];
    return value;
}

} // namespace piolo::files
