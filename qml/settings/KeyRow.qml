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

    signal touch
    signal showWanted(Item item)

    spacing: 4

    Item {
        width: parent.width
        implicitHeight: Math.max(Theme.touch, name.implicitHeight, keys.implicitHeight) + 8

        InkText {
            id: name
            width: row.width * 0.36
            anchors.verticalCenter: parent.verticalCenter
            text: row.words
            wrapMode: Text.Wrap
        }
        Flow {
            id: keys
            anchors.left: name.right
            anchors.leftMargin: Theme.gap
            anchors.right: add.left
            anchors.rightMargin: Theme.gap
            anchors.verticalCenter: parent.verticalCenter
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
            anchors.right: parent.right
            anchors.verticalCenter: parent.verticalCenter
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
