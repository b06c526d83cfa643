// SPDX-License-Identifier: GPL-3.0-or-later
// The beats of the bar with their pulses; the one that sounds is filled and larger.
// Qt 6.4's linter does not see ids outside a delegate.
// qmllint disable unqualified
import QtQuick
import Piolo

Item {
    id: row

    required property BeatView beats
    property real cellHeight: 64
    readonly property int perRow: beats.beats <= 9 ? beats.beats : Math.ceil(beats.beats / Math.ceil(beats.beats / 8))
    readonly property int rows: Math.ceil(beats.beats / Math.max(1, perRow))
    readonly property real gap: Math.max(4, Math.min(12, width / perRow / 12))
    /// A beat that is not divided has no ticks.
    readonly property bool divided: beats.parts > 1
    readonly property real cellWidth: (width - gap * (perRow - 1)) / Math.max(1, perRow)

    implicitHeight: rows * cellHeight + (rows - 1) * gap

    Accessible.role: Accessible.Indicator
    Accessible.name: beats.placeText === "" ? qsTrId("meter.beats", beats.beats) : beats.placeText

    Grid {
        columns: row.perRow
        spacing: row.gap

        Repeater {
            model: row.beats.beats

            Rectangle {
                id: cell

                required property int index
                readonly property bool sounds: index === row.beats.beat
                readonly property bool begins: { row.beats.beats; return row.beats.groupStarts(index) }
                readonly property bool tight: width < height * 1.3

                width: row.cellWidth
                height: row.cellHeight
                radius: Theme.radius
                color: !sounds ? Theme.card : row.beats.counting ? Theme.accentWash : Theme.accent
                border.color: sounds ? Theme.accent : begins ? Theme.faint : Theme.edge
                border.width: sounds && row.beats.counting ? 4 : begins ? 2 : 1

                readonly property color ink: sounds && !row.beats.counting ? Theme.accentInk : Theme.ink

                InkText {
                    id: number
                    x: cell.tight || !row.divided ? (cell.width - width) / 2 : cell.width * 0.1
                    y: cell.tight && row.divided ? parent.height * 0.08 : (parent.height - height) / 2
                    text: cell.index + 1
                    color: cell.ink
                    font.pixelSize: cell.height * (cell.tight ? 0.42 : 0.45)
                    font.weight: Font.Bold
                    Accessible.ignored: true
                }
                Item {
                    id: ticks
                    objectName: "ticks-" + cell.index
                    visible: row.divided
                    readonly property real pitch: width / row.beats.parts
                    x: cell.tight ? cell.width * 0.1 : number.x + number.width + cell.width * 0.08
                    y: cell.tight ? cell.height * 0.58 : (cell.height - height) / 2
                    width: Math.max(8, cell.width * 0.92 - x)
                    height: cell.height * (cell.tight ? 0.32 : 0.5)

                    Repeater {
                        model: row.beats.parts

                        Rectangle {
                            required property int index
                            readonly property bool heard: cell.sounds && index <= row.beats.part
                            x: ticks.pitch * (index + 0.5) - width / 2
                            y: ticks.height - height
                            width: Math.max(2, Math.min(cell.height * 0.12, ticks.pitch * 0.6))
                            height: ticks.height * (index === 0 ? 1 : 0.62)
                            radius: width / 2
                            color: heard ? cell.ink : cell.sounds ? "transparent" : Theme.rung
                            border.color: cell.sounds ? cell.ink : "transparent"
                            border.width: cell.sounds ? 1 : 0
                        }
                    }
                }
            }
        }
    }
}
