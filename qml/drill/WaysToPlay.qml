// SPDX-License-Identifier: GPL-3.0-or-later
// What else can be played besides the drill: each button starts at once.
import QtQuick
import Piolo

Column {
    id: ways

    required property DrillModel drill
    required property KeyBindings keys

    spacing: 8

    InkButton {
        objectName: "try"
        width: parent.width
        text: qsTrId("drill.try").arg(ways.drill.text.target)
        key: ways.keys.shown.try
        onClicked: ways.drill.attempt()
    }
    InkButton {
        objectName: "hear"
        width: parent.width
        visible: ways.drill.listening.possible
        text: ways.drill.listening.active ? qsTrId("drill.stop-listening") : qsTrId("drill.hear")
        key: ways.drill.listening.active ? ways.keys.shown.stop : ways.keys.shown.hear
        onClicked: ways.drill.listening.toggle()
    }
    InkButton {
        objectName: "silent"
        width: parent.width
        text: qsTrId("drill.without-click")
        onClicked: ways.drill.playSilent()
    }
    InkButton {
        objectName: "context"
        width: parent.width
        visible: !ways.drill.openEnded
        text: qsTrId("drill.in-context")
        onClicked: ways.drill.playInContext()
    }
    InkButton {
        objectName: "half"
        width: parent.width
        text: qsTrId("drill.half-tempo").arg(ways.drill.text.halfTempo)
        onClicked: ways.drill.playAtHalf()
    }
    InkButton {
        objectName: "seek"
        width: parent.width
        text: qsTrId("drill.find-tempo").arg(ways.drill.text.tempo)
        onClicked: ways.drill.seek()
    }
}
