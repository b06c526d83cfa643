// SPDX-License-Identifier: GPL-3.0-or-later
// Looks at every text that a window shows: is it whole, inside what holds it, and clear of the others?
#pragma once

#include <QQuickWindow>
#include <QStringList>

namespace piolo::test {

/// A line for each text that is cut off, stands out of its button, its box or the window, or lies over
/// another one. What the player wrote (titles, names) may be cut off: `own` are words of it. Window's thread.
QStringList cutTexts(QQuickWindow& window, const QStringList& own);

} // namespace piolo::test
