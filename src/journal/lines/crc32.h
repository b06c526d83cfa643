// SPDX-License-Identifier: GPL-3.0-or-later
// The checksum used by zlib, PNG and Ethernet.
#pragma once

#include <cstdint>
#include <string_view>

namespace piolo::journal {

/// CRC-32 (polynomial 04C11DB7, reflected, all ones before and after).
[[nodiscard]] std::uint32_t crc32(std::string_view bytes) noexcept;

} // namespace piolo::journal
