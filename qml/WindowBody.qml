// SPDX-License-Identifier: GPL-3.0-or-later
// The content of the window: the navigation, a notice line, and the screen. Sizes are bound, not anchored, so
// that new items are laid out only once: anchors take effect only when everything inside exists. They are bound to ids
// rather than to the parent, which changes once more while the window is destroyed.
// Qt 6.4's linter does not see ids outside a delegate.
// qmllint disable unqualified type
import QtQuick
import Piolo

Item {
    id: body

    required property bool running

    /// On a wider window, lines would be too long to follow. While the click runs, all of it marks.
    readonly property real widest: 2400
    /// What an on-screen keyboard covers at the bottom.
    readonly property real keyboard: Qt.inputMethod.visible ? Qt.inputMethod.keyboardRectangle.height : 0

    function show(screen) {
        if (screen === "help")
            openHelp();
        else
            PracticeRoom.screen = screen;
    }
    /// Opens the help at the chapter of the current screen.
    function openHelp() {
        if (PracticeRoom.screen === "help")
            return;
        HelpTarget.openFrom(PracticeRoom.screen);
        PracticeRoom.screen = "help";
    }

    NavBar {
        id: navigation
        width: body.width
        height: body.running ? 0 : implicitHeight
        visible: !body.running
        screens: Screens.tabs
        smallTabs: Screens.smallTabs
        screen: PracticeRoom.screen
        minutes: PracticeRoom.minutesToday
        now: PracticeRoom.underWay.text
        urgent: PracticeRoom.underWay.urgent
        onWanted: screen => body.show(screen)
        onNowWanted: PracticeRoom.screen = PracticeRoom.underWay.screen
    }
    Shortcut {
        sequence: "F1"
        enabled: !body.running
        onActivated: body.openHelp()
    }
    NoticeLine {
        id: notice
        objectName: "notice"
        y: navigation.height
        width: body.width
        height: implicitHeight
        text: PracticeRoom.notice
        lines: body.running ? 1 : 2
    }
    Item {
        id: screens
        objectName: "screens"
        x: (body.width - width) / 2
        y: notice.y + notice.height
        width: body.running ? body.width : Math.min(body.width, body.widest)
        height: body.height - y - body.keyboard

        Repeater {
            model: Screens.all

            Loader {
                required property var modelData

                readonly property bool here: PracticeRoom.screen === modelData.name
                property bool opened: false

                onHereChanged: opened = opened || here
                Component.onCompleted: opened = here

                width: screens.width
                height: screens.height
                active: here || opened && modelData.kept
                visible: here
                focus: here
                source: modelData.source
            }
        }
    }
}
