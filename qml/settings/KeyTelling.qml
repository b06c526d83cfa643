// SPDX-License-Identifier: GPL-3.0-or-later
// The result of the last change of the keys: why a key was not accepted, or what is different now.
import QtQuick
import Piolo

Column {
    id: telling

    required property KeyBindings bindings
    /// Gets the focus once the question is answered.
    property Item returnTo: null
    readonly property bool refused: bindings.conflict !== ""

    /// It has something new to say, which may be out of view.
    signal showWanted(Item item)

    function show() {
        if (visible && height > 0)
            laidOut.restart();
    }

    spacing: 8
    onHeightChanged: show()
    onVisibleChanged: show()

    Timer {
        id: laidOut
        interval: 30
        onTriggered: telling.showWanted(telling)
    }
    InkText {
        width: parent.width
        visible: text !== ""
        text: telling.refused ? qsTrId("keys.warning").arg(telling.bindings.conflict)
              : telling.bindings.capturing !== "" || telling.bindings.saying === "" ? "" : qsTrId("keys.done").arg(telling.bindings.saying)
        color: telling.refused ? Theme.miss : Theme.clean
        wrapMode: Text.Wrap
        Accessible.role: Accessible.AlertMessage
    }
    InkButton {
        objectName: "takeOverKey"
        visible: telling.bindings.contested
        text: qsTrId("keys.take-over")
        onActiveFocusChanged: telling.bindings.deciding = activeFocus
        onClicked: {
            if (telling.returnTo)
                telling.returnTo.forceActiveFocus(Qt.TabFocusReason);
            telling.bindings.takeOver();
        }
        Component.onDestruction: telling.bindings.deciding = false
    }
    InkText {
        width: parent.width
        visible: text !== ""
        text: telling.bindings.midiLine
        color: Theme.faint
        wrapMode: Text.Wrap
        Accessible.role: Accessible.AlertMessage
    }
}
