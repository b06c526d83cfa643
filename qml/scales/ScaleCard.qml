// SPDX-License-Identifier: GPL-3.0-or-later
// The scale selected in the grid: what its cell says, why it is next, where it begins, its notes, and the button to
// the drill.
import QtQuick
import QtQuick.Layouts
import Piolo

Card {
    id: card

    required property ScaleBoard board
    /// There is little height: the staff is smaller.
    property bool compact: false

    readonly property bool slim: width < 680
    readonly property real inner: width - 2 * lines.anchors.margins
    readonly property real buttonsWidth: slim ? inner : Math.max(240, width * 0.2)
    readonly property real wordsWidth: slim ? inner : inner - buttonsWidth - Theme.gap

    signal drillWanted(bool hear)

    function inOneLine(sentences) {
        return sentences.filter(sentence => sentence !== "").join(" ");
    }

    implicitHeight: lines.implicitHeight + 2 * lines.anchors.margins

    GridLayout {
        id: lines
        anchors.fill: parent
        anchors.margins: card.compact ? 10 : Theme.gap
        columns: card.slim ? 1 : 2
        columnSpacing: Theme.gap
        rowSpacing: card.compact ? 6 : 10

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
                objectName: "cellText"
                Layout.fillWidth: true
                visible: text !== ""
                text: card.board.cellText
                wrapMode: Text.WordWrap
            }
            InkText {
                objectName: "whyText"
                Layout.fillWidth: true
                text: card.inOneLine([card.board.whyText, card.board.startText])
                color: Theme.faint
                wrapMode: Text.WordWrap
                maximumLineCount: card.slim && !card.compact ? 3 : 2
                elide: Text.ElideRight
            }
            Staff {
                objectName: "scaleStaff"
                Layout.fillWidth: true
                Layout.preferredHeight: wantedHeight
                visible: card.board.staff.known
                view: card.board.staff
                dark: Theme.dark
                span: card.wordsWidth
                room: card.compact ? (card.slim ? 50 : 60) : 92
                mostSpace: 8
                leastSpace: card.compact ? 4 : 5
                Accessible.role: Accessible.Graphic
                Accessible.name: card.board.notesText
            }
            InkText {
                Layout.fillWidth: true
                visible: text !== "" && !card.compact
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
            columns: card.slim ? 3 : 2
            columnSpacing: 8
            rowSpacing: 8

            InkButton {
                objectName: "drillScale"
                Layout.columnSpan: card.slim ? 1 : 2
                Layout.fillWidth: true
                Layout.preferredWidth: card.slim ? 100 : implicitWidth
                Layout.preferredHeight: card.compact ? (card.slim ? 46 : 54) : 60
                text: qsTrId("scales.drill")
                key: qsTrId("scales.drill.key")
                strong: true
                size: card.slim ? 18 : 20
                enabled: card.board.canDrill
                onClicked: card.drillWanted(false)
            }
            InkButton {
                objectName: "hearScale"
                Layout.columnSpan: card.slim || card.board.otherName !== "" ? 1 : 2
                Layout.fillWidth: true
                Layout.fillHeight: card.slim
                Layout.preferredWidth: card.slim ? 100 : implicitWidth
                text: qsTrId("scales.hear")
                enabled: card.board.canDrill
                onClicked: card.drillWanted(true)
            }
            InkButton {
                objectName: "spellScale"
                Layout.fillWidth: true
                Layout.fillHeight: card.slim
                Layout.preferredWidth: card.slim ? 100 : implicitWidth
                visible: card.board.otherName !== ""
                text: qsTrId("scales.write").arg(card.board.otherName)
                enabled: !card.board.choices.readOnly
                onClicked: card.board.turnSpelling()
            }
        }
    }
}
