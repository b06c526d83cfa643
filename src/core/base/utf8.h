// SPDX-License-Identifier: GPL-3.0-or-later
// Checks whether bytes are valid UTF-8.
#pragma once

#include <cstddef>
#include <string_view>

namespace piolo {

/// The position of the first byte that is not well-formed UTF-8 according to RFC 3629 (no overlong forms, no
/// surrogates, nothing above U+10FFFF); npos if all bytes are valid.
[[nodiscard]] std::size_t firstNotUtf8(std::string_view bytes) noexcept;

[[nodiscard]] inline bool isUtf8(std::string_view bytes) noexcept {
    return firstNotUtf8(bytes) == std::string_view::npos;
}

} // namespace piolo
