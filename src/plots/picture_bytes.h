// SPDX-License-Identifier: GPL-3.0-or-later
// A drawing as the bytes of a picture of any kind.
#pragma once

#include "plots/picture_kind.h"
#include "plots/plot_file.h"

#include <QString>

#include <string>

namespace piolo::plots {

/// `scale`: pixels of a PNG per unit of `size`. `title` is what a screen reader reads for an SVG, and the
/// title of a PDF. Empty if nothing can be drawn. Needs a QGuiApplication.
[[nodiscard]] std::string pictureBytes(PictureKind kind, QSize size, const QString& title, int scale,
                                       const Drawing& drawing);

} // namespace piolo::plots
