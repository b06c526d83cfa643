// SPDX-License-Identifier: GPL-3.0-or-later
// What a key does, the keys that do it, and a button that waits for another one.
// Qt 6.4's linter does not see ids outside a delegate.
// qmllint disable unqualified
import QtQuick
import Piolo

Column {
    id: row

    required property KeyBindings bindings
    required property string action
    required property string words
    required property var chips
    /// True if the last change was made here.
    property bool touched: false
    readonly property bool waiting: bindings.capturing === action
    /// The keys are below what they do, for want of width.
    readonly property bool stacked: width < 560

    signal touch
    signal showWanted(Item item)

    spacing: 4

    Item {
        id: line
        width: parent.width
        implicitHeight: (row.stacked ? name.implicitHeight + 4 + keyLine : Math.max(name.implicitHeight, keyLine)) + 8

        readonly property real keyLine: Math.max(add.implicitHeight, keys.implicitHeight)

        InkText {
            id: name
            width: row.width * (row.stacked ? 1 : 0.36)
            y: row.stacked ? 4 : (line.height - height) / 2
            text: row.words
            wrapMode: Text.Wrap
        }
        Flow {
            id: keys
            x: row.stacked ? 0 : name.width + Theme.gap
            y: line.height - 4 - (line.keyLine + height) / 2
            width: add.x - x - Theme.gap
            spacing: 8

            Repeater {
                model: row.chips

                KeyChip {
                    required property var modelData

                    words: modelData.text
                    Accessible.description: row.words
                    onClicked: {
                        const trigger = modelData.trigger;
                        row.touch();
                        add.forceActiveFocus(Qt.TabFocusReason);
                        row.bindings.takeAway(row.action, trigger);
                    }
                }
            }
            InkText {
                visible: row.chips.length === 0
                text: qsTrId("keys.none")
                color: Theme.faint
            }
        }
        InkButton {
            id: add
            objectName: "bind-" + row.action
            x: line.width - width
            y: line.height - 4 - (line.keyLine + height) / 2
            width: 150
            text: row.waiting ? qsTrId("keys.press") : qsTrId("keys.add")
            ground: row.waiting ? Theme.accentWash : Theme.card
            Accessible.name: row.waiting ? qsTrId("keys.press.spoken").arg(row.words) : qsTrId("keys.add.spoken").arg(row.words)
            onClicked: {
                row.touch();
                row.bindings.capture(row.action);
            }
        }
    }
    KeyOutcome {
        width: parent.width
        visible: row.touched
        returnTo: add
        onShowWanted: item => row.showWanted(item)
        bindings: row.bindings
    }
}
