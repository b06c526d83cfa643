// SPDX-License-Identifier: GPL-3.0-or-later
// Twelve keys by seven subdivisions; in a narrow window, the keys go down instead of across. A cell fills from the
// bottom as its best approaches the target.
// Qt 6.4's linter does not see ids outside a delegate.
// qmllint disable unqualified
import QtQuick
import Piolo

FocusScope {
    id: grid

    required property ScaleBoard board
    /// The height that there is; the grid is higher if its cells need it.
    property real room: 0

    /// Keys go down, subdivisions across.
    readonly property bool upright: width < 118 + 12 * (Theme.touch + 3)
    readonly property int across: upright ? 7 : 12
    readonly property int down: upright ? 12 : 7
    readonly property real gap: width < 800 || room < 400 ? 3 : 6
    readonly property real side: upright ? 86 : Math.max(118, width * 0.11)
    readonly property real head: upright ? 34 : Math.max(34, Math.min(50, room * 0.13, room - down * (Theme.touch + gap)))
    /// The frame of the selected cell in the last column has room, too.
    readonly property real cellWidth: (width - 3 - side - across * gap) / across
    readonly property real cellHeight: Math.max(Theme.touch, (room - head - down * gap) / down)

    signal drillWanted(bool hear)
    /// The selected cell, in this item's coordinates.
    signal chosenAt(real top, real bottom)

    function placeAcross(row, column) {
        return side + gap + (upright ? row : column) * (cellWidth + gap);
    }
    function placeDown(row, column) {
        return head + gap + (upright ? column : row) * (cellHeight + gap);
    }
    function showChosen() {
        const top = placeDown(board.row, board.column);
        chosenAt(top, top + cellHeight);
    }

    implicitHeight: head + down * (cellHeight + gap)
    Accessible.role: Accessible.Table
    Accessible.name: qsTrId("scales.grid.spoken")

    Keys.onPressed: event => {
        const ways = {[Qt.Key_Left]: [-1, 0], [Qt.Key_Right]: [1, 0], [Qt.Key_Up]: [0, -1], [Qt.Key_Down]: [0, 1]};
        const way = ways[event.key];
        event.accepted = true;
        if (way !== undefined) grid.board.move(way[grid.upright ? 1 : 0], way[grid.upright ? 0 : 1]);
        else if (event.key === Qt.Key_Return || event.key === Qt.Key_Enter || event.key === Qt.Key_Space) grid.drillWanted(false);
        else if (event.key === Qt.Key_Home) grid.board.chooseProposed();
        else event.accepted = false;
    }
    Connections {
        target: grid.board
        function onChosen(): void {
            grid.showChosen();
        }
    }

    Repeater {
        model: grid.board.keys

        GridHead {
            required property int index
            required property var modelData

            x: grid.upright ? 0 : grid.placeAcross(0, index)
            y: grid.upright ? grid.placeDown(0, index) : 0
            width: grid.upright ? grid.side : grid.cellWidth
            height: grid.upright ? grid.cellHeight : grid.head
            beside: grid.upright
            strong: index === grid.board.column
            text: modelData.name
            detail: modelData.concert
            Accessible.role: grid.upright ? Accessible.RowHeader : Accessible.ColumnHeader
            Accessible.name: modelData.spoken
        }
    }
    Repeater {
        model: grid.board.rows

        Item {
            id: line

            required property int index
            required property var modelData

            GridHead {
                x: grid.upright ? grid.placeAcross(line.index, 0) : 0
                y: grid.upright ? 0 : grid.placeDown(line.index, 0)
                width: grid.upright ? grid.cellWidth : grid.side
                height: grid.upright ? grid.head : grid.cellHeight
                beside: !grid.upright
                words: true
                strong: line.index === grid.board.row
                text: grid.upright ? line.modelData.notes : line.modelData.words
                detail: grid.upright ? "" : line.modelData.detail
                Accessible.role: grid.upright ? Accessible.ColumnHeader : Accessible.RowHeader
                Accessible.name: line.modelData.words
            }
            Repeater {
                model: line.modelData.cells

                ScaleCell {
                    required property int index
                    required property var modelData

                    x: grid.placeAcross(line.index, index)
                    y: grid.placeDown(line.index, index)
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
