// SPDX-License-Identifier: GPL-3.0-or-later
#include "journal/lines/crc32.h"

#include <array>
#include <bit>
#include <cstddef>
#include <cstring>

namespace piolo::journal {

namespace {

constexpr std::uint32_t reflected = 0xEDB8'8320;
constexpr std::size_t stride = 8;

// Row n continues over n more zero bytes, so that eight bytes are processed at once.
using Table = std::array<std::array<std::uint32_t, 256>, stride>;

constexpr Table tableOf() {
    Table table{};
    for (std::uint32_t byte = 0; byte < 256; ++byte) {
        std::uint32_t value = byte;
        for (int bit = 0; bit < 8; ++bit) value = (value >> 1U) ^ ((value & 1U) != 0 ? reflected : 0);
        table[0][byte] = value;
    }
    for (std::size_t row = 1; row < stride; ++row)
        for (std::size_t byte = 0; byte < 256; ++byte) {
            const std::uint32_t before = table[row - 1][byte];
            table[row][byte] = (before >> 8U) ^ table[0][before & 0xFFU];
        }
    return table;
}

constexpr Table table = tableOf();

} // namespace

std::uint32_t crc32(std::string_view bytes) noexcept {
    std::uint32_t sum = 0xFFFF'FFFF;
    if constexpr (std::endian::native == std::endian::little)
        for (; bytes.size() >= stride; bytes.remove_prefix(stride)) {
            std::uint64_t word = 0;
            std::memcpy(&word, bytes.data(), stride);
            word ^= sum;
            sum = 0;
            for (std::size_t i = 0; i < stride; ++i) sum ^= table[stride - 1 - i][(word >> (8 * i)) & 0xFFU];
        }
    for (const char byte : bytes)
        sum = (sum >> 8U) ^ table[0][(sum ^ static_cast<std::uint8_t>(byte)) & 0xFFU];
    return ~sum;
}

} // namespace piolo::journal
