// SPDX-License-Identifier: GPL-3.0-or-later
// The scale selected in the grid: why it is next, where it begins, its notes, and the button to the drill.
import QtQuick
import QtQuick.Layouts
import Piolo

Card {
    id: card

    required property ScaleBoard board
    property bool compact: false
    readonly property real buttonsWidth: Math.max(240, width * 0.2)

    signal drillWanted(bool hear)

    implicitHeight: lines.implicitHeight + 2 * lines.anchors.margins

    RowLayout {
        id: lines
        anchors.fill: parent
        anchors.margins: card.compact ? 10 : Theme.gap
        spacing: Theme.gap

        ColumnLayout {
            Layout.fillWidth: true
            spacing: 3

            InkText {
                Layout.fillWidth: true
                text: card.board.title
                font.pixelSize: 20
                font.weight: Font.DemiBold
                elide: Text.ElideRight
                Accessible.role: Accessible.Heading
            }
            InkText {
                objectName: "whyText"
                Layout.fillWidth: true
                text: card.board.whyText + " " + card.board.startText
                color: Theme.faint
                wrapMode: Text.WordWrap
                maximumLineCount: 2
                elide: Text.ElideRight
            }
            Staff {
                id: staff
                objectName: "scaleStaff"
                Layout.fillWidth: true
                Layout.preferredHeight: wantedHeight
                visible: !card.compact && card.board.staff.known
                view: card.board.staff
                dark: Theme.dark
                span: card.width - card.buttonsWidth - 3 * Theme.gap
                room: 92
                mostSpace: 8
                leastSpace: 5
                Accessible.role: Accessible.Graphic
                Accessible.name: card.board.notesText
            }
            InkText {
                Layout.fillWidth: true
                visible: !staff.visible
                text: card.board.notesText
                font.pixelSize: Theme.small
                wrapMode: Text.WordWrap
                maximumLineCount: 2
                elide: Text.ElideRight
            }
            InkText {
                Layout.fillWidth: true
                visible: text !== ""
                text: card.board.endText
                color: Theme.faint
                font.pixelSize: Theme.small
                elide: Text.ElideRight
            }
            InkText {
                Layout.fillWidth: true
                visible: text !== ""
                text: card.board.rangeText
                color: Theme.miss
                font.pixelSize: Theme.small
                wrapMode: Text.WordWrap
            }
        }
        GridLayout {
            Layout.preferredWidth: card.buttonsWidth
            Layout.maximumWidth: card.buttonsWidth
            columns: 2
            columnSpacing: 8
            rowSpacing: 8

            InkButton {
                objectName: "drillScale"
                Layout.columnSpan: 2
                Layout.fillWidth: true
                Layout.preferredHeight: card.compact ? 54 : 60
                text: qsTrId("scales.drill")
                key: qsTrId("scales.drill.key")
                strong: true
                size: 20
                enabled: card.board.canDrill
                onClicked: card.drillWanted(false)
            }
            InkButton {
                objectName: "hearScale"
                Layout.columnSpan: card.board.otherName === "" ? 2 : 1
                Layout.fillWidth: true
                text: qsTrId("scales.hear")
                enabled: card.board.canDrill
                onClicked: card.drillWanted(true)
            }
            InkButton {
                objectName: "spellScale"
                Layout.fillWidth: true
                visible: card.board.otherName !== ""
                text: qsTrId("scales.write").arg(card.board.otherName)
                enabled: !card.board.choices.readOnly
                onClicked: card.board.turnSpelling()
            }
        }
    }
}
