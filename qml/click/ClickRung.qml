// SPDX-License-Identifier: GPL-3.0-or-later
// A rung of the click's ladder: a step of the tempo, and where it leads.
import QtQuick
import QtQuick.Templates as T
import Piolo

T.Button {
    id: rung

    required property ClickModel click
    property int by: 1
    readonly property string led: { click.tempo; return click.nudged(by) }

    text: (by > 0 ? "+" : "−") + Math.abs(by)
    implicitHeight: 56
    hoverEnabled: true
    Accessible.role: Accessible.Button
    Accessible.name: (by > 0 ? qsTrId("click.up") : qsTrId("click.down")).arg(led)
    Keys.onReturnPressed: clicked()
    Keys.onEnterPressed: clicked()
    onClicked: click.nudge(by)

    background: Rectangle {
        radius: 6
        color: rung.down ? Theme.accentWash : Theme.card
        border.color: rung.visualFocus ? Theme.focus : rung.hovered ? Theme.ink : Theme.faint
        border.width: rung.visualFocus ? 3 : rung.hovered ? 2 : 1
    }
    contentItem: Item {
        InkText {
            anchors.centerIn: parent
            anchors.horizontalCenterOffset: -parent.width * 0.16
            text: rung.text
            font.pixelSize: 22
            font.weight: Font.DemiBold
            Accessible.ignored: true
        }
        InkText {
            anchors.centerIn: parent
            anchors.horizontalCenterOffset: parent.width * 0.2
            text: rung.led
            color: Theme.faint
            Accessible.ignored: true
        }
    }
}
