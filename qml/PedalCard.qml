// SPDX-License-Identifier: GPL-3.0-or-later
// Offers to press a pedal: both hands are on the instrument.
import QtQuick
import Piolo

SettingsCard {
    id: card

    required property KeyBindings keys
    readonly property string mine: keys.markKeys
    property string learnt: ""
    readonly property bool waiting: keys.capturing === "mark"

    onMineChanged: learnt = qsTr("✓ Your keys now: %1").arg(mine)
    Component.onCompleted: learnt = ""

    title: qsTr("One key, or a pedal")
    note: qsTr("%1 starts the click, and marks a miss while it runs. Have you a page turner pedal? Press the button here, then the pedal.").arg(keys.markKeys)

    InkButton {
        objectName: "learnPedal"
        text: card.waiting ? qsTr("Press the pedal now (Esc gives up)") : qsTr("Use my pedal")
        ground: card.waiting ? Theme.accentWash : Theme.card
        onClicked: card.keys.capture("mark")
    }
    Words {
        width: parent.width
        visible: text !== ""
        text: card.keys.conflict !== "" ? card.keys.conflict : card.learnt
        color: card.keys.conflict !== "" ? Theme.miss : Theme.clean
        wrapMode: Text.Wrap
        Accessible.role: Accessible.AlertMessage
    }
}
