// SPDX-License-Identifier: GPL-3.0-or-later
#include "edge_walk.h"

#include "contrast.h"

#include <algorithm>
#include <array>

namespace piolo::test {

namespace {

/// A way across an edge: from outside to inside, at right angles, in the middle of one side.
struct Crossing {
    QPoint edge; ///< the first pixel inside
    QPoint inward;
    [[nodiscard]] QPoint outside() const { return edge - 3 * inward; }
};

std::array<Crossing, 4> crossings(const QRect& part) {
    const QPoint middle = part.center();
    return {Crossing{{part.left(), middle.y()}, {1, 0}}, Crossing{{part.right(), middle.y()}, {-1, 0}},
            Crossing{{middle.x(), part.top()}, {0, 1}}, Crossing{{middle.x(), part.bottom()}, {0, -1}}};
}

/// The colours from just outside to a few pixels inside.
std::vector<QRgb> across(const QImage& picture, const Crossing& way) {
    std::vector<QRgb> seen;
    for (int step = -1; step <= 4; ++step)
        if (const QPoint at = way.edge + step * way.inward; picture.rect().contains(at))
            seen.push_back(picture.pixel(at));
    return seen;
}

bool isDrawn(const QQuickItem* part) {
    if (part == nullptr || !part->isVisible() || !part->inherits("QQuickRectangle")) return false;
    const auto* const border = part->property("border").value<QObject*>();
    const bool hasBorder =
        border->property("width").toReal() > 0 && border->property("color").value<QColor>().alpha() > 0;
    return hasBorder || part->property("color").value<QColor>().alpha() > 0;
}

/// What shows where a control is: its background, or the knob or box of one that has no background of its
/// own.
const QQuickItem* bodyOf(const QQuickItem& control) {
    const char* const name = control.inherits("QQuickSlider")     ? "handle"
                             : control.inherits("QQuickCheckBox") ? "indicator"
                                                                  : "background";
    const auto* const body = control.property(name).value<QQuickItem*>();
    return isDrawn(body) ? body : nullptr;
}

/// Scroll bars are not needed to scroll.
bool isControl(const QQuickItem& item) {
    return (item.inherits("QQuickControl") || item.inherits("QQuickTextField")) &&
           !item.inherits("QQuickScrollBar");
}

/// Where an edge lies between two pixels, both are blends.
bool isNearly(QRgb a, QRgb b) {
    constexpr int blend = 40;
    return std::abs(qRed(a) - qRed(b)) < blend && std::abs(qGreen(a) - qGreen(b)) < blend &&
           std::abs(qBlue(a) - qBlue(b)) < blend;
}

} // namespace

bool isCard(const QQuickItem& item) {
    for (const QMetaObject* type = item.metaObject(); type != nullptr; type = type->superClass())
        if (QByteArray(type->className()).startsWith("Card_QMLTYPE")) return true;
    return false;
}

std::vector<Edge> edges(const QList<QQuickItem*>& items) {
    std::vector<Edge> found;
    for (QQuickItem* const item : items) {
        if (isDimmed(item)) continue;
        const QQuickItem* const body = isCard(*item)      ? (isDrawn(item) ? item : nullptr)
                                       : isControl(*item) ? bodyOf(*item)
                                                          : nullptr;
        if (body != nullptr) found.push_back({item, body});
    }
    return found;
}

QString nameOf(const QQuickItem& item) {
    const QString name = item.objectName().isEmpty() ? item.property("text").toString() : item.objectName();
    return QStringLiteral("%1 %2").arg(QString::fromLatin1(item.metaObject()->className()), name);
}

std::optional<double> weakestSide(const QQuickItem& body, const QImage& picture) {
    const QRect whole = body.mapRectToScene(body.boundingRect()).toRect();
    const QRect shown = shownPart(&body, picture.rect());
    std::optional<double> weakest;
    for (const Crossing& way : crossings(whole)) {
        if (!shown.contains(way.edge) || !shown.adjusted(-4, -4, 4, 4).contains(way.outside())) continue;
        if (!picture.rect().contains(way.outside())) continue;
        const QRgb beside = picture.pixel(way.outside());
        double side = 1;
        for (const QRgb colour : across(picture, way)) side = std::max(side, contrast(colour, beside));
        weakest = std::min(weakest.value_or(side), side);
    }
    return weakest;
}

bool showsColour(const QQuickItem& body, const QImage& picture, QRgb colour, double least) {
    const QRect whole = body.mapRectToScene(body.boundingRect()).toRect();
    const auto ways = crossings(whole);
    return std::any_of(ways.begin(), ways.end(), [&](const Crossing& way) {
        if (!picture.rect().contains(way.outside())) return false;
        const auto seen = across(picture, way);
        return std::any_of(seen.begin(), seen.end(),
                           [&](QRgb seenColour) { return isNearly(seenColour, colour); }) &&
               contrast(colour, picture.pixel(way.outside())) >= least;
    });
}

} // namespace piolo::test
