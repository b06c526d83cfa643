// SPDX-License-Identifier: GPL-3.0-or-later
#include "command/output/staff_picture.h"

#include "command/output/drawing_application.h"
#include "plots/plot_file.h"
#include "plots/staff/staff_drawing.h"

#include <cmath>

namespace piolo::command {

namespace {

QByteArray drawnBytes(PictureKind kind, QSize size, const QString& title, const plots::Drawing& drawing) {
    switch (kind) {
    case PictureKind::svg:
        return plots::svgBytes(size, title, drawing);
    case PictureKind::pdf:
        return plots::pdfBytes(size, title, drawing);
    case PictureKind::png:
        break;
    }
    return plots::pngBytes(size, 2, drawing);
}

} // namespace

StaffPicture staffPicture(PictureKind kind, const StaffMusic& music, const QString& title,
                          StaffPictureSize size) {
    const DrawingApplication application;
    const plots::StaffGlyphs& glyphs = plots::StaffGlyphs::usual();
    const plots::StaffLayout layout = plots::layOutStaff(music, size.width, size.space, glyphs);
    const QSize pixels(size.width, static_cast<int>(std::ceil(plots::sizeOf(layout).height())));
    const auto draw = [&](QPainter& painter) {
        plots::drawStaff(painter, layout, glyphs, plots::lightStaffStyle());
    };
    return {drawnBytes(kind, pixels, title, draw).toStdString(), layout.rhythm.inexact.size(),
            !glyphs.fromFont()};
}

std::string remarksOn(const StaffPicture& picture) {
    std::string text;
    if (picture.inexact > 0)
        text.append("notes drawn as the nearest that can be written: ")
            .append(std::to_string(picture.inexact))
            .append(1, '\n');
    if (picture.plainShapes)
        text.append("drawn with plain shapes: the font ")
            .append(plots::StaffGlyphs::family)
            .append(" is not installed (Debian: fonts-oflb-euterpe)\n");
    return text;
}

} // namespace piolo::command
