// SPDX-License-Identifier: GPL-3.0-or-later
// Are these bytes text at all?
#pragma once

#include <cstddef>
#include <string_view>

namespace piolo {

/// Where the first byte stands that is no well-formed UTF-8 as RFC 3629 has it (no overlong forms, no
/// surrogates, nothing above U+10FFFF); npos: all is well.
[[nodiscard]] std::size_t firstNotUtf8(std::string_view bytes) noexcept;

[[nodiscard]] inline bool isUtf8(std::string_view bytes) noexcept {
    return firstNotUtf8(bytes) == std::string_view::npos;
}

} // namespace piolo
