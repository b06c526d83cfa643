// SPDX-License-Identifier: GPL-3.0-or-later
// A sheet of paper on the desk.
import QtQuick

Rectangle {
    color: Theme.card
    border.color: Theme.edge
    border.width: 1
    radius: Theme.radius
}
