// SPDX-License-Identifier: GPL-3.0-or-later
// Which keys were practised in which weeks: runs of scales of every kind. In a narrow window the keys go down, and only
// the last weeks are shown.
// Qt 6.4's linter does not see ids outside a delegate.
// qmllint disable unqualified
import QtQuick
import Piolo

Card {
    id: card

    required property ScaleBoard board

    readonly property var keys: board.keys
    readonly property bool upright: width < 700
    readonly property var weeks: board.weeks
    readonly property int shown: upright ? Math.min(6, weeks.length) : weeks.length
    readonly property real inner: width - 2 * Theme.gap
    readonly property real side: upright ? 56 : Math.max(90, inner * 0.1)
    readonly property int across: upright ? shown : keys.length
    readonly property int down: upright ? keys.length : shown
    readonly property real column: (inner - side) / Math.max(1, across)
    readonly property real line: Math.min(46, (height - title.height - 3 * Theme.gap - note.height) / (down + 1))

    Accessible.role: Accessible.Table
    Accessible.name: title.text

    InkText {
        id: title
        x: Theme.gap
        y: Theme.gap
        text: qsTrId("scales.weeks.title")
        font.weight: Font.DemiBold
        Accessible.role: Accessible.Heading
    }
    InkText {
        id: note
        x: Theme.gap
        anchors.top: title.bottom
        width: card.inner
        text: qsTrId("scales.weeks.hint")
        color: Theme.faint
        font.pixelSize: Theme.small
        wrapMode: Text.WordWrap
    }
    Item {
        x: Theme.gap
        anchors.top: note.bottom
        anchors.topMargin: Theme.gap / 2
        width: card.inner

        Repeater {
            model: card.keys

            InkText {
                required property int index
                required property var modelData

                x: card.upright ? 0 : card.side + index * card.column
                y: card.upright ? (index + 1) * card.line : 0
                width: card.upright ? card.side : card.column
                height: card.line
                horizontalAlignment: card.upright ? Text.AlignLeft : Text.AlignHCenter
                verticalAlignment: Text.AlignVCenter
                text: modelData.name
                font.weight: Font.DemiBold
            }
        }
        Repeater {
            model: card.shown

            Item {
                id: week

                required property int index
                readonly property var values: card.weeks[card.weeks.length - card.shown + index]

                x: card.upright ? card.side + index * card.column : 0
                y: card.upright ? 0 : (index + 1) * card.line

                InkText {
                    width: card.upright ? card.column : card.side - 8
                    height: card.line
                    horizontalAlignment: card.upright ? Text.AlignHCenter : Text.AlignLeft
                    verticalAlignment: Text.AlignVCenter
                    text: week.values.label
                    color: Theme.faint
                    fontSizeMode: Text.HorizontalFit
                    minimumPixelSize: 11
                }
                Repeater {
                    model: week.values.runs

                    Rectangle {
                        id: spot

                        required property int index
                        required property int modelData

                        x: card.upright ? 2 : card.side + index * card.column + 2
                        y: card.upright ? (index + 1) * card.line + 2 : 2
                        width: card.column - 4
                        height: card.line - 4
                        radius: 5
                        color: modelData > 0 ? Theme.cleanWash : "transparent"
                        border.color: Theme.edge
                        border.width: modelData > 0 ? 0 : 1
                        Accessible.role: Accessible.Cell
                        Accessible.name: qsTrId("scales.weeks.cell").arg(card.keys[index].name).arg(week.values.label).arg(Formatter.runs(modelData))

                        InkText {
                            anchors.centerIn: parent
                            text: spot.modelData > 0 ? spot.modelData : ""
                            font.weight: Font.DemiBold
                            Accessible.ignored: true
                        }
                    }
                }
            }
        }
    }
}
