// SPDX-License-Identifier: GPL-3.0-or-later
// What a screen reader would find nameless.
#pragma once

#include <QQuickWindow>
#include <QStringList>

namespace piolo::test {

/// What was walked, and what of it has no name.
struct AccessibleWalk {
    int controls = 0;
    QStringList nameless;
};

/// Walks the accessible tree of the window, and every item that the Tab key can reach.
[[nodiscard]] AccessibleWalk walkAccessibly(QQuickWindow& window);

} // namespace piolo::test
