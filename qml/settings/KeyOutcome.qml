// SPDX-License-Identifier: GPL-3.0-or-later
// The result of the last change of the keys: why a key was not accepted, or what is different now.
import QtQuick
import Piolo

Column {
    id: outcome

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
        onTriggered: outcome.showWanted(outcome)
    }
    InkText {
        width: parent.width
        visible: text !== ""
        text: outcome.refused ? qsTrId("keys.warning").arg(outcome.bindings.conflict)
              : outcome.bindings.capturing !== "" || outcome.bindings.saying === "" ? "" : qsTrId("keys.done").arg(outcome.bindings.saying)
        color: outcome.refused ? Theme.miss : Theme.clean
        wrapMode: Text.Wrap
        Accessible.role: Accessible.AlertMessage
    }
    InkButton {
        objectName: "takeOverKey"
        visible: outcome.bindings.contested
        text: qsTrId("keys.take-over")
        onActiveFocusChanged: outcome.bindings.deciding = activeFocus
        onClicked: {
            if (outcome.returnTo)
                outcome.returnTo.forceActiveFocus(Qt.TabFocusReason);
            outcome.bindings.takeOver();
        }
        Component.onDestruction: outcome.bindings.deciding = false
    }
    InkText {
        width: parent.width
        visible: text !== ""
        text: outcome.bindings.midiLine
        color: Theme.faint
        wrapMode: Text.Wrap
        Accessible.role: Accessible.AlertMessage
    }
}
