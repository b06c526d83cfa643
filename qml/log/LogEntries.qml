// SPDX-License-Identifier: GPL-3.0-or-later
// The individual runs of a line.
// Qt 6.4's linter does not see ids outside a delegate.
// qmllint disable unqualified
import QtQuick
import Piolo

Column {
    id: list

    property var entries: []
    /// Of all that there are.
    property int entryCount: 0
    property bool changeable: true
    /// The entry that was changed last takes the focus again.
    property string changed: ""
    /// The entry whose note is being written; "" for none.
    property string busy: ""

    signal moreWanted
    signal corrected(string passage, string entry, bool clean)
    signal takenBack(string passage, string entry)
    signal noted(string passage, string entry, string text)

    bottomPadding: 8

    Repeater {
        model: list.entries

        LogEntry {
            required property var modelData

            width: list.width
            values: modelData
            changeable: list.changeable
            busy: list.busy === modelData.entry
            again: list.changed === modelData.entry
            onCorrected: clean => list.corrected(modelData.passage, modelData.entry, clean)
            onBusyWanted: on => list.busy = on ? modelData.entry : ""
            onTakenBack: list.takenBack(modelData.passage, modelData.entry)
            onNoted: text => list.noted(modelData.passage, modelData.entry, text)
        }
    }
    InkButton {
        objectName: "moreEntries"
        visible: list.entryCount > list.entries.length
        text: qsTrId("log.more", list.entryCount - list.entries.length)
        onClicked: list.moreWanted()
    }
}
