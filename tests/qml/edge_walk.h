// SPDX-License-Identifier: GPL-3.0-or-later
// The edges of controls and cards on a picture of the window.
#pragma once

#include <QImage>
#include <QList>
#include <QQuickItem>

#include <optional>
#include <vector>

namespace piolo::test {

struct Edge {
    QQuickItem* item;       ///< a control or a card
    const QQuickItem* body; ///< what is drawn of it: its background, its knob or its box
};

/// Those that are enabled and have an edge or a filling. Scroll bars are left out: they are not needed to
/// scroll. Window thread, like everything here.
[[nodiscard]] std::vector<Edge> edges(const QList<QQuickItem*>& items);

[[nodiscard]] bool isCard(const QQuickItem& item);

/// Its type and its name or text.
[[nodiscard]] QString nameOf(const QQuickItem& item);

/// Across the middle of each side that can be seen: the strongest contrast of the edge, or of what is inside,
/// with what is outside. The weakest of them; nothing if no side can be seen.
[[nodiscard]] std::optional<double> weakestSide(const QQuickItem& body, const QImage& picture);

/// That colour is at the edge, on a ground with which it has at least that contrast.
[[nodiscard]] bool showsColour(const QQuickItem& body, const QImage& picture, QRgb colour, double least);

} // namespace piolo::test
