// SPDX-License-Identifier: GPL-3.0-or-later
// The drill: stopped, running or paused.
// Qt 6.4's linter does not know StandardKey.
// qmllint disable unqualified
import QtQuick
import Piolo

FocusScope {
    id: area

    property DrillModel drill: PracticeRoom.drill
    property KeyBindings keys: PracticeRoom.keys
    property MusicPicture picture: PracticeRoom.drillPicture
    property SetModel set: PracticeRoom.set
    property int unsaved: PracticeRoom.unsaved
    property bool recorded: !PracticeRoom.readOnly
    property bool more: PracticeRoom.passages.count > 1

    signal backWanted()
    signal editWanted()
    signal nextWanted()
    signal logWanted()
    signal clickWanted()
    signal passagesWanted()

    readonly property bool running: drill.state === DrillModel.Playing
    readonly property bool paused: drill.state === DrillModel.Paused

    focus: true
    onNextWanted: PracticeRoom.openNext()
    onBackWanted: PracticeRoom.screen = PracticeRoom.wayBack
    onPassagesWanted: PracticeRoom.screen = "passages"
    onEditWanted: PracticeRoom.edit(drill.passage, false)
    onClickWanted: PracticeRoom.openClick()
    onLogWanted: PracticeRoom.screen = "log"

    // Has the focus while no control was chosen: the drill's keys do not need it.
    Item {
        id: ground
        focus: true
    }
    DrillScreen {
        id: stopped
        anchors.fill: parent
        visible: !area.running && !area.paused && area.drill.open
        drill: area.drill
        keys: area.keys
        picture: area.picture
        sound: PracticeRoom.settings.sound
        unsaved: area.unsaved
        recorded: area.recorded
        more: area.more
        wayBack: PracticeRoom.wayBackText
        onBackWanted: area.backWanted()
        onEditWanted: area.editWanted()
        onNextWanted: area.nextWanted()
        onLogWanted: area.logWanted()
        onClickWanted: area.clickWanted()
    }
    PlayingScreen {
        anchors.fill: parent
        visible: area.running
        drill: area.drill
        keys: area.keys
        picture: area.picture
        set: area.set
    }
    PausePanel {
        anchors.fill: parent
        visible: area.paused
        drill: area.drill
        keys: area.keys
    }
    Column {
        anchors.centerIn: parent
        visible: !area.drill.open
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
            onClicked: area.passagesWanted()
        }
    }
    Connections {
        target: PracticeRoom
        function onNothingToStop() {
            stopped.hideHowToPlay();
        }
    }
    Shortcut {
        sequences: [StandardKey.Back]
        enabled: area.visible && !area.running
        onActivated: area.backWanted()
    }
    // Whatever had the focus before: the drill's keys come first again.
    onVisibleChanged: if (visible) ground.focus = true
    onRunningChanged: ground.forceActiveFocus()
    onPausedChanged: ground.forceActiveFocus()
}
