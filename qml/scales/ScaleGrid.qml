// SPDX-License-Identifier: GPL-3.0-or-later
// Twelve keys by seven subdivisions. A cell fills from the bottom as its best approaches the target.
// Qt 6.4's linter does not see ids outside a delegate.
// qmllint disable unqualified
import QtQuick
import Piolo

FocusScope {
    id: grid

    required property ScaleBoard board

    readonly property real side: Math.max(118, width * 0.11)
    readonly property real head: Math.max(34, Math.min(50, height * 0.13))
    readonly property real gap: height < 330 ? 3 : 6
    readonly property real cellWidth: (width - side - 12 * gap) / 12
    readonly property real cellHeight: (height - head - 7 * gap) / 7

    signal drillWanted(bool hear)

    Accessible.role: Accessible.Table
    Accessible.name: qsTrId("scales.grid.spoken")

    Keys.onPressed: event => {
        const ways = {[Qt.Key_Left]: [-1, 0], [Qt.Key_Right]: [1, 0], [Qt.Key_Up]: [0, -1], [Qt.Key_Down]: [0, 1]};
        const way = ways[event.key];
        event.accepted = true;
        if (way !== undefined) grid.board.move(way[0], way[1]);
        else if (event.key === Qt.Key_Return || event.key === Qt.Key_Enter || event.key === Qt.Key_Space) grid.drillWanted(false);
        else if (event.key === Qt.Key_Home) grid.board.chooseProposed();
        else event.accepted = false;
    }

    Repeater {
        model: grid.board.keys

        Item {
            id: key

            required property int index
            required property var modelData

            x: grid.side + grid.gap + index * (grid.cellWidth + grid.gap)
            width: grid.cellWidth
            height: grid.head
            Accessible.role: Accessible.ColumnHeader
            Accessible.name: modelData.spoken

            InkText {
                anchors.horizontalCenter: parent.horizontalCenter
                y: 0
                text: key.modelData.name
                font.pixelSize: grid.head * 0.44
                font.weight: key.index === grid.board.column ? Font.Bold : Font.DemiBold
                Accessible.ignored: true
            }
            InkText {
                // On whole pixels: small letters between them look pale.
                x: Math.round(key.x + (key.width - width) / 2) - key.x
                y: Math.round(key.height - height - 2)
                text: key.modelData.concert
                color: Theme.faint
                font.pixelSize: Math.max(12, grid.head * 0.28)
                font.weight: Font.Medium
                Accessible.ignored: true
            }
        }
    }
    Repeater {
        model: grid.board.rows

        Item {
            id: line

            required property int index
            required property var modelData

            y: grid.head + grid.gap + index * (grid.cellHeight + grid.gap)
            width: grid.width
            height: grid.cellHeight

            Column {
                width: grid.side
                anchors.verticalCenter: parent.verticalCenter

                InkText {
                    width: parent.width
                    horizontalAlignment: Text.AlignRight
                    text: line.modelData.words
                    font.weight: line.index === grid.board.row ? Font.Bold : Font.Medium
                    fontSizeMode: Text.HorizontalFit
                    minimumPixelSize: 11
                }
                InkText {
                    width: parent.width
                    visible: grid.cellHeight > 40
                    horizontalAlignment: Text.AlignRight
                    text: line.modelData.detail
                    color: Theme.faint
                    font.pixelSize: Math.min(Theme.small, grid.cellHeight * 0.3)
                }
            }
            Repeater {
                model: line.modelData.cells

                ScaleCell {
                    required property int index
                    required property var modelData

                    x: grid.side + grid.gap + index * (grid.cellWidth + grid.gap)
                    width: grid.cellWidth
                    height: grid.cellHeight
                    objectName: "cell-" + line.index + "-" + index
                    cell: modelData
                    chosen: line.index === grid.board.row && index === grid.board.column
                    next: line.index === grid.board.proposedRow && index === grid.board.proposedColumn
                    focused: chosen && grid.activeFocus
                    onPicked: {
                        grid.forceActiveFocus();
                        grid.board.choose(line.index, index);
                    }
                    onDrilled: grid.drillWanted(false)
                }
            }
        }
    }
}
