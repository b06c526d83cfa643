// SPDX-License-Identifier: GPL-3.0-or-later
// Text from outside without what is not text.
#pragma once

#include <string>
#include <string_view>

namespace piolo {

/// Without control characters (C0, DEL and C1, except tab and newline) and noncharacters (U+FDD0–U+FDEF and
/// the last two of each plane; Unicode 15, section 23.7). What remains is well-formed in XML 1.0
/// (section 2.2) once it is escaped. `text` is valid UTF-8.
[[nodiscard]] std::string cleanText(std::string_view text);

} // namespace piolo
