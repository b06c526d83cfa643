// SPDX-License-Identifier: GPL-3.0-or-later
// The days of the log, newest first. Only visible ones are created.
// Qt 6.4's linter does not see ids outside a delegate.
// qmllint disable unqualified
import QtQuick
import QtQuick.Templates as T
import Piolo

ListView {
    id: list

    required property LogModel log

    readonly property Item focused: Window.activeFocusItem

    /// The player has scrolled; until then the list stays at its top, however high its header grows.
    property bool moved: false

    function stayAtTop() {
        if (!moved)
            positionViewAtBeginning();
    }
    function holds(item) {
        for (let up = item; up; up = up.parent)
            if (up === contentItem)
                return true;
        return false;
    }
    function follow(item) {
        moved = true;
        const top = item.mapToItem(contentItem, 0, 0).y;
        if (top < contentY)
            contentY = top - Theme.gap;
        else if (top + item.height > contentY + height)
            contentY = top + item.height + Theme.gap - height;
    }

    model: log
    spacing: 20
    clip: true
    boundsBehavior: Flickable.StopAtBounds
    keyNavigationEnabled: false
    activeFocusOnTab: count > 0
    Accessible.role: Accessible.List
    Accessible.name: qsTrId("log.days")
    onMovementStarted: moved = true
    onFocusedChanged: if (focused && holds(focused)) follow(focused)
    Keys.onPressed: event => {
        const page = height * 0.9;
        moved = true;
        if (event.key === Qt.Key_PageDown)
            contentY = Math.min(contentY + page, originY + contentHeight - height);
        else if (event.key === Qt.Key_PageUp)
            contentY = Math.max(contentY - page, originY);
        else if (event.key === Qt.Key_Home)
            positionViewAtBeginning();
        else if (event.key === Qt.Key_End)
            positionViewAtEnd();
        else
            return;
        event.accepted = true;
    }

    delegate: LogDay {
        width: list.width - 14
        log: list.log
    }

    T.ScrollBar.vertical: ScrollMark {
    }

    Rectangle {
        parent: list
        anchors.fill: parent
        visible: list.Window.activeFocusItem === list
        color: "transparent"
        border.color: Theme.focus
        border.width: 2
        radius: 4
    }
    InkText {
        parent: list
        anchors.centerIn: parent
        anchors.verticalCenterOffset: list.headerItem ? Math.min(list.headerItem.height / 2, parent.height / 4) : 0
        width: parent.width - 4 * Theme.gap
        visible: list.count === 0
        horizontalAlignment: Text.AlignHCenter
        wrapMode: Text.Wrap
        color: Theme.faint
        text: list.log.nothingYet ? qsTrId("log.empty")
                                  : qsTrId("log.none-found")
    }
}
