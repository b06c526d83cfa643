// SPDX-License-Identifier: GPL-3.0-or-later
// A line of the log: runs of a passage at one tempo. When opened, it shows each of them.
// Qt 6.4's linter does not see ids outside a delegate.
// qmllint disable unqualified
import QtQuick
import QtQuick.Templates as T
import Piolo

Column {
    id: line

    property var values: ({})
    property var entries: []
    /// Of all its entries.
    property int entryCount: 0
    property bool open: false
    property bool changeable: true
    property string changed: ""
    readonly property bool compact: width < 620

    signal toggled
    signal moreWanted
    signal takenBack(string passage, string entry)
    signal corrected(string passage, string entry, bool clean)
    signal noted(string passage, string entry, string text)

    T.ItemDelegate {
        id: head
        objectName: "logLine"
        width: line.width
        implicitHeight: line.compact ? 62 : Theme.touch
        hoverEnabled: true
        activeFocusOnTab: true
        Accessible.role: Accessible.ListItem
        Accessible.name: line.values.spoken
        onClicked: line.toggled()
        Keys.onReturnPressed: line.toggled()
        Keys.onUpPressed: nextItemInFocusChain(false).forceActiveFocus(Qt.BacktabFocusReason)
        Keys.onDownPressed: nextItemInFocusChain(true).forceActiveFocus(Qt.TabFocusReason)

        background: Rectangle {
            radius: 8
            color: head.hovered || line.open ? Theme.paper : "transparent"
            border.color: Theme.focus
            border.width: head.visualFocus ? 3 : 0
        }
        contentItem: LogFace {
            compact: line.compact
            values: line.values
        }
    }
    InkText {
        x: line.compact ? 24 : 64
        width: parent.width - x
        visible: text !== "" && !line.open
        text: line.values.note
        elide: Text.ElideRight
        color: Theme.faint
        font.italic: true
        bottomPadding: 6
        Accessible.ignored: true
    }
    Loader {
        x: line.compact ? 24 : 64
        width: parent.width - x
        active: line.open
        visible: active
        sourceComponent: LogEntries {
            entries: line.entries
            entryCount: line.entryCount
            onMoreWanted: line.moreWanted()
            changeable: line.changeable
            changed: line.changed
            onCorrected: (passage, entry, clean) => line.corrected(passage, entry, clean)
            onTakenBack: (passage, entry) => line.takenBack(passage, entry)
            onNoted: (passage, entry, text) => line.noted(passage, entry, text)
        }
    }
}
