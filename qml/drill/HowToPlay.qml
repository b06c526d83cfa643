// SPDX-License-Identifier: GPL-3.0-or-later
// How the passage is played: its beat, notes, rhythm and stage, and what can be played besides the drill.
import QtQuick
import Piolo

Card {
    id: panel

    required property DrillModel drill
    required property KeyBindings keys
    property bool recorded: true

    signal closed()
    signal editWanted()
    signal clickWanted()

    /// `reason`: how it was opened. Opened by a click, it leaves Space to the drill.
    function take(reason) {
        close.forceActiveFocus(reason);
    }

    objectName: "howToPlayPanel"
    Accessible.role: Accessible.Dialog
    Accessible.name: title.text

    InkText {
        id: title
        x: 20
        y: 12
        height: close.height
        verticalAlignment: Text.AlignVCenter
        text: qsTrId("drill.how-to-play")
        font.pixelSize: 20
        font.weight: Font.DemiBold
        Accessible.role: Accessible.Heading
    }
    InkButton {
        id: close
        objectName: "howToPlayClose"
        anchors.right: parent.right
        anchors.rightMargin: 12
        y: 12
        text: qsTrId("parts.close")
        onClicked: panel.closed()
    }
    ScrollColumn {
        x: 20
        y: close.y + close.height + 8
        width: parent.width - 28
        height: parent.height - y - 12
        spacing: 14

        Choice {
            objectName: "feltBeat"
            width: parent.width
            label: qsTrId("drill.felt-beat")
            options: panel.drill.playedAs.beats
            value: panel.drill.playedAs.beat
            onChosen: value => panel.drill.playedAs.feel(value)
        }
        Choice {
            objectName: "articulation"
            width: parent.width
            label: qsTrId("drill.articulation")
            options: panel.drill.playedAs.articulations
            value: panel.drill.playedAs.articulation
            onChosen: value => panel.drill.playedAs.setArticulation(value)
        }
        Choice {
            objectName: "rhythm"
            width: parent.width
            label: qsTrId("drill.rhythm")
            options: panel.drill.playedAs.rhythms
            value: panel.drill.playedAs.rhythm
            onChosen: value => panel.drill.playedAs.setRhythm(value)
        }
        InkText {
            width: parent.width
            visible: text !== ""
            text: Formatter.inOneLine(panel.drill.playedAs.bests, panel.drill.playedAs.fingering)
            color: Theme.faint
            font.pixelSize: Theme.small
            wrapMode: Text.Wrap
        }
        StagePart {
            width: parent.width
            drill: panel.drill
            recorded: panel.recorded
        }
        InkText {
            width: parent.width
            text: qsTrId("drill.play-now")
            font.weight: Font.DemiBold
            Accessible.role: Accessible.Heading
        }
        WaysToPlay {
            width: parent.width
            drill: panel.drill
            keys: panel.keys
        }
        Tick {
            objectName: "modelClick"
            width: parent.width
            visible: panel.drill.listening.possible
            text: qsTrId("drill.hear-with-click")
            Accessible.name: qsTrId("drill.hear-with-click.hint")
            checked: panel.drill.listening.withClick
            onTicked: on => panel.drill.listening.withClick = on
        }
        InkButton {
            objectName: "justAClick"
            width: parent.width
            text: qsTrId("click.title")
            onClicked: panel.clickWanted()
        }
        InkButton {
            objectName: "editPassage"
            width: parent.width
            text: qsTrId("drill.edit")
            onClicked: panel.editWanted()
        }
    }
}
