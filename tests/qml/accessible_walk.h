// SPDX-License-Identifier: GPL-3.0-or-later
// Finds what a screen reader would find without a name.
#pragma once

#include <QAccessible>
#include <QQuickWindow>
#include <QStringList>

namespace piolo::test {

/// What can be pressed, chosen or typed into.
[[nodiscard]] bool isControl(QAccessible::Role role);

/// How many controls were visited, and which of them have no name.
struct AccessibleWalk {
    int controls = 0;
    QStringList nameless;
};

/// Visits the accessible tree of the window, and every item that the Tab key reaches.
[[nodiscard]] AccessibleWalk walkAccessibly(QQuickWindow& window);

} // namespace piolo::test
