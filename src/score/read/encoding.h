// SPDX-License-Identifier: GPL-3.0-or-later
// The encoding of XML bytes.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

namespace piolo::score {

enum class Encoding : std::uint8_t { utf8, utf16, latin1, other };

/// Determined from the byte order mark, the first bytes or the XML declaration.
[[nodiscard]] Encoding encodingOf(std::string_view bytes);
/// The text cut to at most `most` bytes, between two characters.
[[nodiscard]] std::string cutText(std::string_view text, std::size_t most);

} // namespace piolo::score
