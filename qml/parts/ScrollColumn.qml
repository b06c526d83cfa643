// SPDX-License-Identifier: GPL-3.0-or-later
// A column that scrolls if it is longer than its space, also by keyboard, and follows the focus.
import QtQuick
import QtQuick.Templates as T

Flickable {
    id: scroll

    default property alias content: column.data
    property alias spacing: column.spacing
    /// The column itself takes the focus: for pages of text.
    property bool readable: false

    readonly property Item focused: Window.activeFocusItem

    contentWidth: width
    contentHeight: column.height
    contentY: -topMargin
    boundsBehavior: Flickable.StopAtBounds
    clip: true
    activeFocusOnTab: readable

    function scrollTo(y) {
        contentY = Math.max(-topMargin, Math.min(y, contentHeight + bottomMargin - height));
    }
    function holds(item) {
        for (let up = item; up; up = up.parent)
            if (up === column)
                return true;
        return false;
    }
    function reveal(item) {
        const top = item.mapToItem(column, 0, 0).y;
        if (top - Theme.gap < contentY)
            scrollTo(top - 2 * Theme.gap);
        else if (top + item.height + Theme.gap > contentY + height)
            scrollTo(top + item.height + Theme.gap - height);
    }

    onFocusedChanged: if (focused && holds(focused)) reveal(focused)
    // An on-screen keyboard came up, or the window was turned.
    onHeightChanged: if (focused && holds(focused)) reveal(focused)
    Keys.onUpPressed: scrollTo(contentY - 60)
    Keys.onDownPressed: scrollTo(contentY + 60)
    Keys.onPressed: event => {
        const pages = {};
        pages[Qt.Key_PageUp] = contentY - height * 0.9;
        pages[Qt.Key_PageDown] = contentY + height * 0.9;
        pages[Qt.Key_Home] = -topMargin;
        pages[Qt.Key_End] = contentHeight;
        if (!(event.key in pages))
            return;
        scrollTo(pages[event.key]);
        event.accepted = true;
    }

    T.ScrollBar.vertical: ScrollMark {
    }

    Rectangle {
        parent: scroll
        anchors.fill: parent
        visible: scroll.readable && scroll.activeFocus
        color: "transparent"
        border.color: Theme.focus
        border.width: 2
        radius: 4
    }

    Column {
        id: column
        width: scroll.width - 16
    }
}
