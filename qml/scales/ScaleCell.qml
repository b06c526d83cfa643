// SPDX-License-Identifier: GPL-3.0-or-later
// One key in one subdivision: its best tempo above its streak, filled as far as the target is reached.
import QtQuick
import Piolo

Item {
    id: square

    required property var cell
    property bool chosen: false
    property bool next: false
    property bool focused: false

    readonly property bool played: cell.best !== ""
    /// There is room for the best tempo alone; the rest is in words below the grid.
    readonly property bool tight: height < 40 || width < 64

    signal picked()
    signal drilled()

    Accessible.role: Accessible.Cell
    Accessible.name: (next ? qsTrId("scales.cell.next").arg(cell.spoken) : cell.spoken)
    Accessible.selected: chosen
    Accessible.onPressAction: drilled()

    Rectangle {
        id: ground
        anchors.fill: parent
        radius: 5
        color: Theme.card

        Rectangle {
            anchors.bottom: parent.bottom
            width: parent.width
            height: parent.height * square.cell.share
            radius: square.cell.share > 0.95 ? 5 : 2
            color: Theme.cleanWash
        }
        Rectangle {
            anchors.bottom: parent.bottom
            width: parent.width
            height: square.played ? Math.max(2, Math.round(parent.height * 0.05)) : 0
            color: Theme.clean
        }
    }
    Rectangle {
        anchors.fill: parent
        anchors.margins: square.chosen ? -2 : 0
        radius: square.chosen ? 7 : 5
        color: "transparent"
        border.color: square.focused ? Theme.focus : square.chosen ? Theme.ink : Theme.edge
        border.width: square.chosen ? 3 : 1
    }
    InkText {
        anchors.horizontalCenter: parent.horizontalCenter
        y: square.tight ? (parent.height - height) / 2 : parent.height * 0.08
        text: square.played ? square.cell.best : square.next ? "▸" : ""
        color: square.played ? Theme.ink : Theme.accent
        font.pixelSize: Math.min(32, square.width * 0.42, square.height * (square.tight ? 0.5 : 0.42))
        font.weight: Font.Bold
        Accessible.ignored: true
    }
    InkText {
        anchors.horizontalCenter: parent.horizontalCenter
        anchors.bottom: parent.bottom
        anchors.bottomMargin: parent.height * 0.1
        visible: !square.tight && square.played
        text: square.cell.below
        font.pixelSize: Math.max(11, Math.min(17, square.height * 0.27, square.width * 0.16))
        Accessible.ignored: true
    }
    InkText {
        anchors.right: parent.right
        anchors.top: parent.top
        anchors.rightMargin: 4
        anchors.topMargin: 1
        text: square.cell.secure ? "✓" : square.next && square.played ? "▸" : ""
        color: square.cell.secure ? Theme.clean : Theme.accent
        font.pixelSize: Math.max(11, Math.min(15, square.height * 0.3))
        font.weight: Font.Bold
        Accessible.ignored: true
    }
    TapHandler {
        onTapped: square.picked()
        onDoubleTapped: square.drilled()
    }
}
