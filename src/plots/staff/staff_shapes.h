// SPDX-License-Identifier: GPL-3.0-or-later
// Signs of music from plain strokes and ellipses, for where no music font is installed.
#pragma once

#include "plots/staff/staff_glyphs.h"

namespace piolo::plots {

/// As in StaffGlyphs. Plain, but each sign can be told from every other.
[[nodiscard]] QPainterPath plainShape(StaffGlyph glyph);

} // namespace piolo::plots
