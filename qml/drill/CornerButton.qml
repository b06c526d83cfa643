// SPDX-License-Identifier: GPL-3.0-or-later
// A button in a corner of the screen while the click runs: a sign, large enough for a finger.
import QtQuick
import QtQuick.Templates as T
import Piolo

T.Button {
    id: corner

    property string mark: ""
    property real size: 64

    width: size
    height: size
    focusPolicy: Qt.NoFocus
    hoverEnabled: true
    Accessible.role: Accessible.Button
    Accessible.name: text

    background: Rectangle {
        color: corner.down ? Theme.accentWash : corner.hovered ? Theme.card : "transparent"
        border.color: Theme.edge
        border.width: 1
    }
    contentItem: InkText {
        text: corner.mark
        font.pixelSize: corner.size * 0.5
        horizontalAlignment: Text.AlignHCenter
        verticalAlignment: Text.AlignVCenter
        Accessible.ignored: true
    }
}
