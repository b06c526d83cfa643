// SPDX-License-Identifier: GPL-3.0-or-later
// Qt 6.4's linter does not see ids outside a component.
// qmllint disable unqualified
import QtQuick
import QtQuick.Templates as T
import Piolo

Window {
    id: window

    readonly property bool drilling: PracticeRoom.screen === "drill"
    readonly property bool running: drilling && PracticeRoom.drill.state === DrillModel.Playing

    width: 1280
    height: 800
    minimumWidth: 480
    minimumHeight: 640
    visible: true
    title: drilling && PracticeRoom.drill.open ? qsTrId("window.title").arg(PracticeRoom.drill.text.title) : qsTrId("window.name")
    color: Theme.paper

    Binding {
        target: Theme
        property: "dark"
        value: PracticeRoom.settings.dark
    }
    Binding {
        target: Theme
        property: "narrow"
        value: window.width < 1200
    }

    property bool closingConfirmed: false

    onClosing: close => {
        if (closingConfirmed || PracticeRoom.saveAll())
            return;
        close.accepted = false;
        PracticeRoom.drill.stop();
        question.active = true;
        (question.item as ClosingQuestion).open();
    }

    Loader {
        id: question
        active: false
        sourceComponent: ClosingQuestion {
            parent: T.Overlay.overlay
            unsaved: PracticeRoom.unsaved
            onConfirmed: {
                window.closingConfirmed = true;
                window.close();
            }
        }
    }
    Loader {
        id: body
        // Set before the window is shown, unlike the size of its content.
        width: window.width
        height: window.height
        focus: true
        sourceComponent: WindowBody {
            running: window.running
        }
    }
    Connections {
        target: PracticeRoom
        function onLanguageChanged() {
            restart.start();
        }
    }

    Timer {
        id: restart
        interval: 0 // the language menu must close before it is destroyed
        onTriggered: window.recreate()
    }

    /// Recreates the screens in another language and restores the focus.
    function recreate() {
        const place = window.activeFocusItem ? window.activeFocusItem.objectName : "";
        body.active = false;
        body.active = true;
        const again = place === "" ? null : itemNamed(body, place);
        if (again)
            again.forceActiveFocus(Qt.TabFocusReason);
    }
    function itemNamed(item, name) {
        if (item.objectName === name)
            return item;
        for (let i = 0; i < item.children.length; ++i) {
            const found = itemNamed(item.children[i], name);
            if (found)
                return found;
        }
        return null;
    }
}
