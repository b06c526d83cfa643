// SPDX-License-Identifier: GPL-3.0-or-later
// What lies in the window: the way from screen to screen, a line of notice, and the screen. Sizes are bound, not
// anchored, so that what is made is laid out once: anchors follow only when everything inside them is there.
import QtQuick
import Piolo

Item {
    id: desk

    required property bool drilling
    required property bool running

    NavBar {
        id: navigation
        width: parent.width
        height: desk.running ? 0 : implicitHeight
        visible: !desk.running
        screen: PracticeRoom.screen
        minutes: PracticeRoom.minutesToday
        onWanted: screen => screen === "help" ? HelpTarget.openHere() : PracticeRoom.screen = screen
    }
    Shortcut {
        sequence: "F1"
        enabled: !desk.running
        onActivated: HelpTarget.openHere()
    }
    NoticeLine {
        id: notice
        objectName: "notice"
        y: navigation.height
        width: parent.width
        height: implicitHeight
        text: PracticeRoom.notice
    }
    Item {
        id: stage
        y: notice.y + notice.height
        width: parent.width
        height: parent.height - y

        Kept {
            width: parent.width
            height: parent.height
            shown: desk.drilling
            focus: desk.drilling
            sourceComponent: DrillArea {
                focus: true
                drill: PracticeRoom.drill
                keys: PracticeRoom.keys
                picture: PracticeRoom.drillPicture
                unsaved: PracticeRoom.unsaved
                recorded: !PracticeRoom.readOnly
                more: PracticeRoom.passages.count > 1
                onNextWanted: PracticeRoom.openNext()
                onPassagesWanted: PracticeRoom.screen = "passages"
                onEditWanted: PracticeRoom.edit(PracticeRoom.drill.passage, false)
            }
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
            width: parent.width
            height: parent.height
            active: !desk.drilling
            visible: active
            focus: active
            source: screens[PracticeRoom.screen] ?? ""
        }
    }
}
