// SPDX-License-Identifier: GPL-3.0-or-later
#include "plots/plot_file.h"

#include <QBuffer>
#include <QImage>
#include <QPainter>
#include <QPdfWriter>
#include <QSvgGenerator>

#include <algorithm>

namespace piolo::plots {

namespace {

constexpr int pixelsToTheInch = 96;

QByteArray pdfOf(const QPageSize& paper, const QString& title, std::size_t pages,
                 const PageDrawing& drawing) {
    QBuffer buffer;
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer(&buffer);
    writer.setTitle(title);
    writer.setResolution(pixelsToTheInch);
    writer.setPageSize(paper);
    writer.setPageMargins(QMarginsF());
    QPainter painter;
    if (!painter.begin(&writer)) return {};
    for (std::size_t page = 0; page < pages; ++page) {
        if (page > 0) writer.newPage();
        drawing(painter, page);
    }
    painter.end();
    return buffer.data();
}

} // namespace

QByteArray svgBytes(QSize size, const QString& title, const Drawing& drawing) {
    QBuffer buffer;
    QSvgGenerator generator;
    generator.setOutputDevice(&buffer);
    generator.setSize(size);
    generator.setViewBox(QRect(QPoint(0, 0), size));
    generator.setTitle(title.toHtmlEscaped()); // QSvgGenerator writes it without escaping
    QPainter painter;
    if (!painter.begin(&generator)) return {};
    drawing(painter);
    painter.end();
    return buffer.data();
}

QByteArray pngBytes(QSize size, int scale, const Drawing& drawing) {
    const int times = std::clamp(scale, 1, 4);
    QImage image(size * times, QImage::Format_ARGB32_Premultiplied);
    if (image.isNull()) return {};
    image.setDevicePixelRatio(times);
    image.fill(Qt::transparent);
    QPainter painter(&image);
    drawing(painter);
    painter.end();
    QBuffer buffer;
    buffer.open(QIODevice::WriteOnly);
    if (!image.save(&buffer, "PNG")) return {};
    return buffer.data();
}

QByteArray pdfBytes(QSize size, const QString& title, const Drawing& drawing) {
    constexpr double pointsToThePixel = 72.0 / pixelsToTheInch;
    const QPageSize page(QSizeF(size) * pointsToThePixel, QPageSize::Point, {}, QPageSize::ExactMatch);
    return pdfOf(page, title, 1, [&](QPainter& painter, std::size_t) { drawing(painter); });
}

QByteArray pdfPages(QPageSize::PageSizeId paper, const QString& title, std::size_t pages,
                    const PageDrawing& drawing) {
    return pages == 0 ? QByteArray() : pdfOf(QPageSize(paper), title, pages, drawing);
}

} // namespace piolo::plots
