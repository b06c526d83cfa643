// SPDX-License-Identifier: GPL-3.0-or-later
#include "drawings/picture_bytes.h"

namespace piolo::drawings {

std::string pictureBytes(PictureKind kind, QSize size, const QString& title, int scale,
                         const plots::Drawing& drawing) {
    switch (kind) {
    case PictureKind::svg:
        return plots::svgBytes(size, title, drawing).toStdString();
    case PictureKind::pdf:
        return plots::pdfBytes(size, title, drawing).toStdString();
    case PictureKind::png:
        break;
    }
    return plots::pngBytes(size, scale, drawing).toStdString();
}

} // namespace piolo::drawings
