// SPDX-License-Identifier: GPL-3.0-or-later
// One side of the frame on a page; dark enough on white paper in both themes.
import QtQuick

Rectangle {
    property bool picked: false
    property bool focused: false
    readonly property int thick: picked ? 6 : 2

    color: focused ? "#1f5fbf" : "#9c630f"
}
