// SPDX-License-Identifier: GPL-3.0-or-later
// Music signs made of plain strokes and ellipses, for use without a music font.
#pragma once

#include "plots/staff/staff_glyphs.h"

namespace piolo::plots {

/// As in StaffGlyphs. The shapes are plain, but no two look alike.
[[nodiscard]] QPainterPath plainShape(StaffGlyph glyph);

} // namespace piolo::plots
