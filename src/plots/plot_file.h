// SPDX-License-Identifier: GPL-3.0-or-later
// A plot as the bytes of a file. The caller writes the file.
#pragma once

#include "plots/curve/tempo_curve.h"

#include <QByteArray>
#include <QPageSize>
#include <QSize>

#include <functional>

class QPainter;

namespace piolo::plots {

/// Draws a picture into 0,0 … its size.
using Drawing = std::function<void(QPainter&)>;

/// SVG 1.2 Tiny. `title` is what a screen reader reads out for the picture. Empty if nothing could be drawn.
[[nodiscard]] QByteArray svgBytes(QSize size, const QString& title, const Drawing& drawing);
/// PNG with `scale` pixels (1 to 4) per device-independent pixel. Empty if nothing could be drawn.
[[nodiscard]] QByteArray pngBytes(QSize size, int scale, const Drawing& drawing);
/// A one-page PDF of that size (96 device-independent pixels per inch) with vector lines and text. Empty if
/// nothing could be drawn.
[[nodiscard]] QByteArray pdfBytes(QSize size, const QString& title, const Drawing& drawing);

/// Draws the given page, counted from 0.
using PageDrawing = std::function<void(QPainter&, std::size_t page)>;
/// A PDF with `pages` pages of a standard size. Empty if `pages` is 0.
[[nodiscard]] QByteArray pdfPages(QPageSize::PageSizeId paper, const QString& title, std::size_t pages,
                                  const PageDrawing& drawing);

} // namespace piolo::plots
