// SPDX-License-Identifier: GPL-3.0-or-later
// Is it text at all?
#pragma once

#include <string_view>

namespace piolo::journal {

/// Well-formed UTF-8 as RFC 3629 has it: no overlong forms, no surrogates, nothing above U+10FFFF.
[[nodiscard]] bool isUtf8(std::string_view bytes) noexcept;

} // namespace piolo::journal
