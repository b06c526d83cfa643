// SPDX-License-Identifier: GPL-3.0-or-later
// Offers to press a pedal: both hands are on the instrument.
import QtQuick
import Piolo

SettingsCard {
    id: card

    required property KeyBindings keys
    property bool touched: false
    readonly property bool waiting: keys.capturing === "mark"

    title: qsTr("One key, or a pedal")
    note: qsTr("%1 starts the click, and marks a miss while it runs. Have you a page turner pedal? Press the button here, then the pedal. A MIDI switch works as well; the settings have more.").arg(keys.markKeys)

    InkButton {
        id: learn
        objectName: "learnPedal"
        text: card.waiting ? qsTr("Press the pedal now (Esc gives up)") : qsTr("Use my pedal")
        ground: card.waiting ? Theme.accentWash : Theme.card
        onClicked: {
            card.touched = true;
            card.keys.capture("mark");
        }
    }
    KeyTelling {
        width: parent.width
        visible: card.touched
        returnTo: learn
        bindings: card.keys
    }
    Component.onDestruction: keys.giveUp()
}
