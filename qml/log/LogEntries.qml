// SPDX-License-Identifier: GPL-3.0-or-later
// The individual runs of a line.
// Qt 6.4's linter does not see ids outside a delegate.
// qmllint disable unqualified
import QtQuick
import Piolo

Column {
    id: list

    property var entries: []
    property bool changeable: true
    /// The entry with an open question or note; "" for none.
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
