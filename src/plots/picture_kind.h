// SPDX-License-Identifier: GPL-3.0-or-later
// The kinds of picture files.
#pragma once

#include <cstdint>

namespace piolo::plots {

enum class PictureKind : std::uint8_t { svg, png, pdf };

} // namespace piolo::plots
