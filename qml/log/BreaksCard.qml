// SPDX-License-Identifier: GPL-3.0-or-later
// Where a passage breaks, and the passages that can be made from that.
// Qt 6.4's linter does not see ids outside a delegate.
// qmllint disable unqualified
import QtQuick
import Piolo

Card {
    id: card

    required property LogFigures figures
    required property KeyBindings keys

    readonly property var breaks: figures.breaks
    readonly property var bars: breaks.bars ?? []

    signal drillRequested(string passage)

    InkText {
        id: title
        x: Theme.gap
        y: 14
        width: parent.width - 2 * Theme.gap
        text: card.breaks.title ?? qsTrId("breaks.title")
        font.weight: Font.DemiBold
        elide: Text.ElideMiddle
        Accessible.role: Accessible.Heading
    }
    InkText {
        id: note
        anchors.left: title.left
        anchors.right: title.right
        anchors.top: title.bottom
        anchors.topMargin: 4
        wrapMode: Text.Wrap
        text: card.breaks.note ?? qsTrId("breaks.empty")
        color: Theme.faint
        font.pixelSize: Theme.small
    }
    Row {
        id: columns
        anchors.left: title.left
        anchors.right: title.right
        anchors.top: note.bottom
        anchors.topMargin: 8
        anchors.bottom: actions.top
        anchors.bottomMargin: 8
        Accessible.role: Accessible.List
        Accessible.name: title.text

        Repeater {
            model: card.bars

            BreakBar {
                required property var modelData

                width: columns.width / Math.max(1, card.bars.length)
                height: columns.height
                values: modelData
            }
        }
    }
    Column {
        id: actions
        anchors.left: title.left
        anchors.right: title.right
        anchors.bottom: parent.bottom
        anchors.bottomMargin: Theme.gap
        spacing: 8

        InkText {
            width: parent.width
            visible: text !== "" && card.figures.madeText === ""
            text: card.figures.stretchNote
            color: Theme.faint
            font.pixelSize: Theme.small
            wrapMode: Text.Wrap
        }
        InkButton {
            objectName: "makeStretch"
            width: parent.width
            visible: card.figures.stretchText !== "" && card.figures.madeText === ""
            strong: true
            text: card.figures.stretchText
            key: card.keys.shown.stretch
            onClicked: card.figures.makeStretch()
        }
        Row {
            id: parts
            readonly property bool offered: card.figures.madeText === "" && card.bars.length > 0
            readonly property bool both: card.figures.buildUpText !== "" && card.figures.partsText !== ""
            readonly property real part: both ? (width - spacing) / 2 : width

            width: parent.width
            visible: offered && (card.figures.buildUpText !== "" || card.figures.partsText !== "")
            spacing: 8

            InkButton {
                objectName: "buildUp"
                width: parts.part
                visible: card.figures.buildUpText !== ""
                text: card.figures.buildUpText
                Accessible.description: qsTrId("breaks.last-bar-first.hint")
                onClicked: card.figures.buildUp()
            }
            InkButton {
                objectName: "makeParts"
                width: parts.part
                visible: card.figures.partsText !== ""
                text: card.figures.partsText
                Accessible.description: qsTrId("breaks.in-parts.hint")
                onClicked: card.figures.makeParts()
            }
        }
        InkText {
            width: parent.width
            visible: text !== ""
            text: card.figures.madeText
            wrapMode: Text.Wrap
            Accessible.role: Accessible.AlertMessage
        }
        InkButton {
            objectName: "drillMade"
            width: parent.width
            visible: card.figures.madeText !== ""
            strong: true
            text: qsTrId("breaks.drill")
            onClicked: card.drillRequested(card.figures.made)
        }
    }
}
