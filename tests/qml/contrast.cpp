// SPDX-License-Identifier: GPL-3.0-or-later
#include "contrast.h"

#include <algorithm>
#include <cmath>

namespace piolo::test {

namespace {

double linear(double channel) {
    return channel <= 0.04045 ? channel / 12.92 : std::pow((channel + 0.055) / 1.055, 2.4);
}

double luminance(QRgb colour) {
    return 0.2126 * linear(qRed(colour) / 255.0) + 0.7152 * linear(qGreen(colour) / 255.0) +
           0.0722 * linear(qBlue(colour) / 255.0);
}

} // namespace

double contrast(QRgb a, QRgb b) {
    const auto [dark, light] = std::minmax({luminance(a), luminance(b)});
    return (light + 0.05) / (dark + 0.05);
}

bool isDimmed(const QQuickItem* item) {
    for (; item != nullptr; item = item->parentItem())
        if (!item->isEnabled() || item->opacity() < 1) return true;
    return false;
}

QRect shownPart(const QQuickItem* item, const QRect& picture) {
    QRectF part = item->mapRectToScene(item->boundingRect()) & QRectF(picture);
    for (const QQuickItem* above = item->parentItem(); above != nullptr; above = above->parentItem())
        if (above->clip()) part &= above->mapRectToScene(QRectF(0, 0, above->width(), above->height()));
    return part.toRect();
}

} // namespace piolo::test
