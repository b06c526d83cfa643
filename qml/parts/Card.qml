// SPDX-License-Identifier: GPL-3.0-or-later
// A card that looks like a sheet of paper.
import QtQuick

Rectangle {
    color: Theme.card
    border.color: Theme.edge
    border.width: 1
    radius: Theme.radius
}
