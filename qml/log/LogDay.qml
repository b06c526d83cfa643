// SPDX-License-Identifier: GPL-3.0-or-later
// A day of the log: its figures, then its lines in the order played.
// Qt 6.4's linter does not see ids outside a delegate.
// qmllint disable unqualified
import QtQuick
import Piolo

Column {
    id: day
    objectName: "logDay"

    required property int index
    required property string dayTitle
    required property string figures
    required property var lines
    property LogModel log
    /// The line whose runs are shown individually; -1 for none.
    property int openLine: -1

    signal showWanted(Item item)

    onLinesChanged: openLine = -1

    Item {
        width: parent.width
        implicitHeight: title.implicitHeight + 10

        InkText {
            id: title
            x: 8
            text: day.dayTitle
            font.pixelSize: 18
            font.weight: Font.DemiBold
            Accessible.role: Accessible.Heading
            Accessible.name: qsTrId("log.day.heading").arg(day.dayTitle).arg(day.figures)
        }
        InkText {
            anchors.right: parent.right
            anchors.rightMargin: 8
            anchors.baseline: title.baseline
            text: day.figures
            color: Theme.faint
            Accessible.ignored: true
        }
    }
    Repeater {
        model: day.lines

        LogLine {
            id: line

            required property int index
            required property var modelData

            width: day.width
            values: modelData
            open: day.openLine === index
            entries: open ? day.log.entriesOf(day.index, index) : []
            changeable: !day.log.readOnly
            onToggled: day.openLine = open ? -1 : index
            onFocused: day.showWanted(line)
            onTakenBack: (passage, entry) => day.log.takeBack(passage, entry)
            onNoted: (passage, entry, text) => day.log.setNote(passage, entry, text)
        }
    }
}
