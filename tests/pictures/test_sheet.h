// SPDX-License-Identifier: GPL-3.0-or-later
// Invented sheet music, as pictures and as PDF: staves with filled ovals.
#pragma once

#include <QBuffer>
#include <QImage>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>
#include <QString>

#include <fstream>
#include <string>

namespace piolo::test {

/// `staves` staves with notes that climb, and a black square in the top left corner.
inline void drawCurves(QPainter& painter, const QSize& size, int staves) {
    painter.fillRect(QRect(QPoint(), size), Qt::white);
    painter.fillRect(QRect(0, 0, size.width() / 10, size.width() / 10), Qt::black);
    const double gap = size.height() / (staves * 12.0 + 6);
    painter.setPen(QPen(Qt::black, std::max(1.0, gap / 8)));
    painter.setBrush(Qt::black);
    for (int staff = 0; staff < staves; ++staff) {
        const double top = gap * (6 + staff * 12);
        for (int line = 0; line < 5; ++line)
            painter.drawLine(QPointF(size.width() * 0.06, top + line * gap),
                             QPointF(size.width() * 0.94, top + line * gap));
        for (int note = 0; note < 12; ++note)
            painter.drawEllipse(
                QPointF(size.width() * (0.1 + note * 0.07), top + gap * (4 - (note + staff) % 5)), gap * 0.6,
                gap * 0.45);
    }
}

inline QImage sheet(const QSize& size, int staves = 8) {
    QImage image(size, QImage::Format_RGB32);
    QPainter painter(&image);
    drawCurves(painter, size, staves);
    return image;
}

inline std::string encoded(const QImage& image, const char* format) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    image.save(&buffer, format);
    return bytes.toStdString();
}

/// Pages of 21 by 29.7 cm, each with one more staff than the previous.
inline std::string pdf(int pages) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer(&buffer);
    writer.setPageSize(QPageSize(QPageSize::A4));
    writer.setPageMargins({});
    writer.setResolution(100);
    QPainter painter(&writer);
    for (int page = 0; page < pages; ++page) {
        if (page > 0) writer.newPage();
        drawCurves(painter, QSize(writer.width(), writer.height()), page + 1);
    }
    painter.end();
    return bytes.toStdString();
}

inline void write(const std::string& path, const std::string& bytes) {
    std::ofstream(path, std::ios::binary) << bytes;
}

} // namespace piolo::test
