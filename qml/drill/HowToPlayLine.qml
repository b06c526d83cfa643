// SPDX-License-Identifier: GPL-3.0-or-later
// How the passage is played, in a line, and the way to change it.
import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Piolo

T.AbstractButton {
    id: line

    required property DrillModel drill
    property bool open: false

    readonly property string set: Formatter.inOneLine(drill.playedAs.text, drill.stages.names[drill.stages.stage])

    objectName: "howToPlay"
    implicitHeight: Math.max(48, implicitContentHeight + 12)
    hoverEnabled: true
    text: qsTrId("drill.how-to-play")
    Accessible.role: Accessible.Button
    Accessible.name: qsTrId("parts.label-value").arg(text).arg(set)
    Accessible.checkable: true
    Accessible.checked: open
    Keys.onReturnPressed: clicked()
    Keys.onEnterPressed: clicked()

    background: Rectangle {
        radius: Theme.radius
        color: line.down ? Theme.accentWash : Theme.card
        border.color: line.visualFocus ? Theme.focus : line.hovered ? Theme.ink : Theme.edge
        border.width: line.visualFocus ? 3 : 1
    }
    leftPadding: Theme.gap
    rightPadding: Theme.gap
    contentItem: RowLayout {
        ColumnLayout {
            Layout.fillWidth: true
            spacing: 0

            InkText {
                Layout.fillWidth: true
                text: line.text
                font.weight: Font.DemiBold
                elide: Text.ElideRight
                Accessible.ignored: true
            }
            InkText {
                Layout.fillWidth: true
                text: line.set
                color: Theme.faint
                font.pixelSize: Theme.small
                elide: Text.ElideRight
                Accessible.ignored: true
            }
        }
        InkText {
            text: "›"
            font.pixelSize: 22
            Accessible.ignored: true
        }
    }
}
