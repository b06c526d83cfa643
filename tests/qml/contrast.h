// SPDX-License-Identifier: GPL-3.0-or-later
// Contrast as the Web Content Accessibility Guidelines 2.2 define it (w3.org/TR/WCAG22, "relative luminance"
// and "contrast ratio"; the numbers from memory).
#pragma once

#include <QImage>
#include <QQuickItem>

namespace piolo::test {

/// 1…21.
[[nodiscard]] double contrast(QRgb a, QRgb b);

/// It or what holds it is disabled or see-through: the guidelines leave it out.
[[nodiscard]] bool isDimmed(const QQuickItem* item);

/// The part of it that no list or page clips, in the picture of its window.
[[nodiscard]] QRect shownPart(const QQuickItem* item, const QRect& picture);

} // namespace piolo::test
