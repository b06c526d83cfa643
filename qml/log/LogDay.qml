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
    required property int lineCount
    property LogModel log
    /// The line whose runs are shown individually; -1 for none.
    property int openLine: -1
    /// The entry that was changed last: its line stays open, and it keeps the focus.
    property string changed: ""

    /// So many lines and entries are shown; the player asks for more.
    property int most: LogModel.MostAtOnce
    property int mostEntries: LogModel.MostAtOnce

    onLinesChanged: openLine = changed === "" ? -1 : log.lineOf(index, changed)

    Item {
        readonly property bool fits: title.implicitWidth + figures.implicitWidth + 40 <= width

        width: parent.width
        implicitHeight: title.implicitHeight + 10 + (fits ? 0 : figures.implicitHeight + 2)

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
            id: figures
            x: parent.fits ? parent.width - width - 8 : 8
            y: parent.fits ? title.y + title.baselineOffset - baselineOffset : title.implicitHeight + 2
            text: day.figures
            color: Theme.faint
            Accessible.ignored: true
        }
    }
    Repeater {
        model: day.most > LogModel.MostAtOnce ? day.log.linesOf(day.index, day.most) : day.lines

        LogLine {
            id: line

            required property int index
            required property var modelData

            width: day.width
            values: modelData
            open: day.openLine === index
            entries: open ? day.log.entriesOf(day.index, index, day.mostEntries) : []
            entryCount: open ? day.log.entryCount(day.index, index) : 0
            changeable: !day.log.readOnly
            changed: day.changed
            onMoreWanted: day.mostEntries += LogModel.MostAtOnce
            onToggled: {
                day.changed = "";
                day.mostEntries = LogModel.MostAtOnce;
                day.openLine = open ? -1 : index;
            }
            onTakenBack: (passage, entry) => day.log.takeBack(passage, entry)
            onCorrected: (passage, entry, clean) => {
                day.changed = entry;
                day.log.setClean(passage, entry, clean);
            }
            onNoted: (passage, entry, text) => {
                day.changed = entry;
                day.log.setNote(passage, entry, text);
            }
        }
    }
    InkButton {
        objectName: "moreLines"
        visible: day.lineCount > day.most
        text: qsTrId("log.more", day.lineCount - day.most)
        onClicked: day.most += LogModel.MostAtOnce
    }
}
