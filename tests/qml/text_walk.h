// SPDX-License-Identifier: GPL-3.0-or-later
// Checks every text that a window shows: is it a text, complete, inside its container, and clear of other
// texts?
#pragma once

#include <QQuickWindow>
#include <QStringList>

namespace piolo::test {

/// One line for each text that is cut off, extends beyond its button, its box or the window, overlaps
/// another, or is an id where a text should be. What the player wrote (titles, names) may be cut off: `own`
/// has parts of it. Window thread.
QStringList cutTexts(QQuickWindow& window, const QStringList& own);

} // namespace piolo::test
