// SPDX-License-Identifier: GPL-3.0-or-later
// The runs of a line, one by one.
// Qt 6.4's linter does not see the ids around a delegate.
// qmllint disable unqualified
import QtQuick
import Piolo

Column {
    id: list

    property var entries: []
    property bool changeable: true
    /// The entry that is asked about, or whose note is written; "": none.
    property string busy: ""

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
            onBusyWanted: on => list.busy = on ? modelData.entry : ""
            onTakenBack: list.takenBack(modelData.passage, modelData.entry)
            onNoted: text => list.noted(modelData.passage, modelData.entry, text)
        }
    }
}
