// SPDX-License-Identifier: GPL-3.0-or-later
// Invites the player to press a pedal: both hands are on the instrument.
import QtQuick
import Piolo

SettingsCard {
    id: card

    required property KeyBindings keys
    property bool touched: false
    readonly property bool waiting: keys.capturing === "mark"

    title: qsTrId("pedal.title")
    note: qsTrId("pedal.hint").arg(keys.shown.mark)

    InkButton {
        id: learn
        objectName: "learnPedal"
        text: card.waiting ? qsTrId("pedal.press") : qsTrId("pedal.use")
        ground: card.waiting ? Theme.accentWash : Theme.card
        onClicked: {
            card.touched = true;
            card.keys.capture("mark");
        }
    }
    KeyOutcome {
        width: parent.width
        visible: card.touched
        returnTo: learn
        bindings: card.keys
    }
    Component.onDestruction: keys.giveUp()
}
