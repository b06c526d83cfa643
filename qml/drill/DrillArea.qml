// SPDX-License-Identifier: GPL-3.0-or-later
// The drill: stopped, running or paused.
import QtQuick
import Piolo

FocusScope {
    id: place

    required property DrillModel drill
    required property KeyBindings keys
    required property MusicPicture picture
    property int unsaved: 0
    property bool recorded: true

    property bool more: false

    signal editWanted()
    signal nextWanted()
    signal passagesWanted()

    readonly property bool running: drill.state === DrillModel.Playing
    readonly property bool paused: drill.state === DrillModel.Paused

    // Has the keyboard while no control was chosen: the drill's keys go their own way.
    Item {
        id: ground
        focus: true
    }
    DrillScreen {
        anchors.fill: parent
        visible: !place.running && !place.paused && place.drill.open
        drill: place.drill
        keys: place.keys
        picture: place.picture
        unsaved: place.unsaved
        recorded: place.recorded
        more: place.more
        onEditWanted: place.editWanted()
        onNextWanted: place.nextWanted()
    }
    PlayingScreen {
        anchors.fill: parent
        visible: place.running
        drill: place.drill
        keys: place.keys
        picture: place.picture
    }
    PausePanel {
        anchors.fill: parent
        visible: place.paused
        drill: place.drill
        keys: place.keys
    }
    Column {
        anchors.centerIn: parent
        visible: !place.drill.open
        spacing: Theme.gap

        InkText {
            text: qsTrId("drill.choose-passage")
            font.pixelSize: Theme.heading
            font.weight: Font.DemiBold
        }
        InkButton {
            objectName: "toPassages"
            anchors.horizontalCenter: parent.horizontalCenter
            strong: true
            text: qsTrId("drill.to-passages")
            onClicked: place.passagesWanted()
        }
    }
    onRunningChanged: ground.forceActiveFocus()
    onPausedChanged: ground.forceActiveFocus()
}
