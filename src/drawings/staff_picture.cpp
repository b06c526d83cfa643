// SPDX-License-Identifier: GPL-3.0-or-later
#include "drawings/staff_picture.h"

#include "drawings/drawing_application.h"
#include "plots/picture_bytes.h"
#include "plots/staff/staff_drawing.h"
#include "text/one_line.h"

#include <cmath>

namespace piolo::drawings {

StaffPicture staffPicture(plots::PictureKind kind, const StaffMusic& music, const std::string& title,
                          StaffPictureSize size) {
    const DrawingApplication application;
    const plots::StaffGlyphs& glyphs = plots::StaffGlyphs::usual();
    const plots::StaffLayout layout = plots::layOutStaff(music, size.width, size.space, glyphs);
    const QSize pixels(size.width, static_cast<int>(std::ceil(plots::sizeOf(layout).height())));
    const auto draw = [&](QPainter& painter) {
        plots::drawStaff(painter, layout, glyphs, plots::lightStaffStyle());
    };
    return {plots::pictureBytes(kind, pixels, text::onOneLine(title), 2, draw), layout.rhythm.inexact.size(),
            !glyphs.fromFont()};
}

} // namespace piolo::drawings
