// SPDX-License-Identifier: GPL-3.0-or-later
// A plot as the bytes of a file. Writing them is the caller's part.
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

/// SVG 1.2 Tiny. `title` is what a screen reader says of the picture. Empty when nothing could be drawn.
[[nodiscard]] QByteArray svgBytes(QSize size, const QString& title, const Drawing& drawing);
/// PNG of `scale` pixels to the device-independent pixel (1 to 4). Empty when nothing could be drawn.
[[nodiscard]] QByteArray pngBytes(QSize size, int scale, const Drawing& drawing);
/// A PDF of one page of that size (96 device-independent pixels to the inch), in lines and letters, not in
/// dots. Empty when nothing could be drawn.
[[nodiscard]] QByteArray pdfBytes(QSize size, const QString& title, const Drawing& drawing);

/// Draws that page, from 0.
using PageDrawing = std::function<void(QPainter&, std::size_t page)>;
/// The same of so many pages of a usual size. Empty without a page.
[[nodiscard]] QByteArray pdfPages(QPageSize::PageSizeId paper, const QString& title, std::size_t pages,
                                  const PageDrawing& drawing);

} // namespace piolo::plots
