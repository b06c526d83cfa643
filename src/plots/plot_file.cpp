// SPDX-License-Identifier: GPL-3.0-or-later
#include "plots/plot_file.h"

#include <QBuffer>
#include <QImage>
#include <QPainter>
#include <QSvgGenerator>

#include <algorithm>

namespace piolo::plots {

QByteArray svgBytes(QSize size, const QString& title, const Drawing& drawing) {
    QBuffer buffer;
    QSvgGenerator generator;
    generator.setOutputDevice(&buffer);
    generator.setSize(size);
    generator.setViewBox(QRect(QPoint(0, 0), size));
    generator.setTitle(title.toHtmlEscaped()); // written into the file as it is
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

} // namespace piolo::plots
