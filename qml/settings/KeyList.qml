// SPDX-License-Identifier: GPL-3.0-or-later
// The keys, changed by pressing new ones.
// Qt 6.4's linter does not see ids outside a delegate.
// qmllint disable unqualified
import QtQuick
import Piolo

Column {
    id: list

    required property KeyBindings bindings
    /// Where the last change was made: an action, "all", or the name of another place.
    property string touched: ""

    signal touch(string place)
    signal showWanted(Item item)

    spacing: 4

    Repeater {
        model: list.bindings

        KeyRow {
            width: list.width
            bindings: list.bindings
            touched: list.touched === action
            onTouch: list.touch(action)
            onShowWanted: item => list.showWanted(item)
        }
    }
    Item {
        width: 1
        height: 4
    }
    InkButton {
        objectName: "usualKeys"
        text: qsTrId("keys.reset")
        onClicked: {
            list.touch("all");
            list.bindings.restore();
        }
    }
    KeyOutcome {
        width: parent.width
        visible: list.touched === "all"
        onShowWanted: item => list.showWanted(item)
        bindings: list.bindings
    }
    Component.onDestruction: bindings.giveUp()
}
