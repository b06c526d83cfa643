// SPDX-License-Identifier: GPL-3.0-or-later
// The keys, changed by pressing them.
// Qt 6.4's linter does not see the ids around a delegate.
// qmllint disable unqualified
import QtQuick
import Piolo

Column {
    id: list

    required property KeyBindings bindings

    spacing: 4

    Repeater {
        model: list.bindings

        KeyRow {
            width: list.width
            waiting: list.bindings.capturing === action
            onCaptureWanted: action => list.bindings.capture(action)
        }
    }
    Words {
        width: parent.width
        visible: text !== ""
        text: list.bindings.conflict
        color: Theme.miss
        wrapMode: Text.Wrap
        Accessible.role: Accessible.AlertMessage
    }
    InkButton {
        objectName: "usualKeys"
        text: qsTr("The usual keys again")
        onClicked: list.bindings.restore()
    }
    Component.onDestruction: bindings.giveUp()
}
