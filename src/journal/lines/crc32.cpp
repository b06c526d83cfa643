// SPDX-License-Identifier: GPL-3.0-or-later
#include "journal/lines/crc32.h"

#include <zlib.h>

namespace piolo::journal {

std::uint32_t crc32(std::string_view bytes) noexcept {
    // NOLINTNEXTLINE(cppcoreguidelines-pro-type-reinterpret-cast): the same bytes, as zlib names them
    const auto* const start = reinterpret_cast<const Bytef*>(bytes.data());
    return static_cast<std::uint32_t>(::crc32_z(0, start, bytes.size()));
}

} // namespace piolo::journal
