// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Window
import Piolo

Window {
    id: window

    readonly property bool drilling: PracticeRoom.screen === "drill"
    readonly property bool running: drilling && PracticeRoom.drill.state === DrillModel.Playing

    width: 1280
    height: 800
    minimumWidth: 1024
    minimumHeight: 640
    visible: true
    title: drilling && PracticeRoom.drill.open ? qsTr("%1 – Piolo").arg(PracticeRoom.drill.title) : qsTr("Piolo")
    color: Theme.paper

    Binding {
        target: Theme
        property: "dark"
        value: PracticeRoom.settings.dark
    }

    NavBar {
        id: navigation
        width: parent.width
        height: window.running ? 0 : implicitHeight
        visible: !window.running
        screen: PracticeRoom.screen
        minutes: PracticeRoom.minutesToday
        onWanted: screen => PracticeRoom.screen = screen
    }
    NoticeLine {
        id: notice
        objectName: "notice"
        anchors.top: navigation.bottom
        width: parent.width
        height: implicitHeight
        text: PracticeRoom.notice
    }
    Item {
        id: stage
        anchors.top: notice.bottom
        anchors.bottom: parent.bottom
        width: parent.width

        DrillPlace {
            anchors.fill: parent
            visible: window.drilling
            focus: window.drilling
            drill: PracticeRoom.drill
            keys: PracticeRoom.keys
            picture: PracticeRoom.drillPicture
            unsaved: PracticeRoom.unsaved
            recorded: !PracticeRoom.readOnly
            more: PracticeRoom.passages.count > 1
            onNextWanted: PracticeRoom.openNext()
            onEditWanted: PracticeRoom.edit(PracticeRoom.drill.passage, false)
        }
        Loader {
            id: other
            objectName: "other"
            readonly property var screens: ({
                "passages": "PassagesScreen.qml",
                "scales": "ScalesScreen.qml",
                "log": "LogScreen.qml",
                "runThrough": "RunThroughScreen.qml",
                "settings": "SettingsScreen.qml",
                "help": "HelpScreen.qml",
                "welcome": "WelcomeScreen.qml"
            })
            anchors.fill: parent
            active: !window.drilling
            visible: active
            focus: active
            source: screens[PracticeRoom.screen] ?? ""
        }
    }
}
