// SPDX-License-Identifier: GPL-3.0-or-later
#include "plots/picture_bytes.h"

namespace piolo::plots {

std::string pictureBytes(PictureKind kind, QSize size, const QString& title, int scale,
                         const Drawing& drawing) {
    switch (kind) {
    case PictureKind::svg:
        return svgBytes(size, title, drawing).toStdString();
    case PictureKind::pdf:
        return pdfBytes(size, title, drawing).toStdString();
    case PictureKind::png:
        break;
    }
    return pngBytes(size, scale, drawing).toStdString();
}

} // namespace piolo::plots
