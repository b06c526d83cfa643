// SPDX-License-Identifier: GPL-3.0-or-later
// Practice time per day for four weeks, by kind, with missed days.
// Qt 6.4's linter does not see ids outside a delegate.
// qmllint disable unqualified
import QtQuick
import Piolo

Card {
    id: card

    required property LogFigures figures

    InkText {
        id: title
        x: Theme.gap
        y: 14
        text: qsTrId("minutes.title")
        font.weight: Font.DemiBold
        Accessible.role: Accessible.Heading
    }
    InkText {
        anchors.right: parent.right
        anchors.rightMargin: Theme.gap
        anchors.baseline: title.baseline
        text: card.figures.mostMinutes > 0 ? qsTrId("minutes.most").arg(card.figures.mostMinutes) : ""
        color: Theme.faint
        font.pixelSize: Theme.small
    }
    Row {
        id: bars
        anchors.left: parent.left
        anchors.right: parent.right
        anchors.margins: Theme.gap
        anchors.top: title.bottom
        anchors.topMargin: 10
        anchors.bottom: axis.top
        Accessible.role: Accessible.List
        Accessible.name: qsTrId("minutes.spoken")

        Repeater {
            model: card.figures.days

            MinutesBar {
                required property var modelData

                width: bars.width / 28
                height: bars.height
                values: modelData
            }
        }
    }
    Item {
        id: axis
        anchors.left: bars.left
        anchors.right: bars.right
        anchors.bottom: legend.top
        anchors.bottomMargin: 6
        implicitHeight: since.implicitHeight

        InkText {
            id: since
            text: qsTrId("minutes.weeks-ago")
            color: Theme.faint
            font.pixelSize: Theme.small
        }
        InkText {
            anchors.right: parent.right
            text: qsTrId("minutes.today")
            color: Theme.faint
            font.pixelSize: Theme.small
        }
    }
    Row {
        id: legend
        anchors.left: bars.left
        anchors.bottom: parent.bottom
        anchors.bottomMargin: 12
        spacing: 12

        Repeater {
            model: [
                {words: qsTrId("minutes.drilled"), part: "runs"},
                {words: qsTrId("minutes.other-runs"), part: "apart"},
                {words: qsTrId("minutes.run-throughs"), part: "throughs"}
            ]

            Row {
                id: entry

                required property var modelData

                spacing: 6

                MinutesPart {
                    anchors.verticalCenter: parent.verticalCenter
                    width: 12
                    height: 12
                    part: entry.modelData.part
                }
                InkText {
                    text: entry.modelData.words
                    color: Theme.faint
                    font.pixelSize: Theme.small
                }
            }
        }
    }
}
