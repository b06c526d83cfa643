// SPDX-License-Identifier: GPL-3.0-or-later
// One screen in the navigation.
import QtQuick
import QtQuick.Templates as T

T.Button {
    id: tab

    property bool here: false
    property bool small: false
    /// The one tab that the Tab key reaches; the arrow keys go on from there.
    property bool stop: false
    /// Shown instead of the text where there is no room.
    property string mark: ""

    signal moved(int by)

    implicitWidth: Math.max(Theme.touch, implicitContentWidth + (small ? 20 : 2 * Theme.gap))
    implicitHeight: Theme.touch
    hoverEnabled: true
    focusPolicy: stop ? Qt.StrongFocus : Qt.ClickFocus
    Accessible.role: Accessible.PageTab
    Accessible.name: text
    Accessible.selected: here
    Keys.onReturnPressed: clicked()
    Keys.onEnterPressed: clicked()
    Keys.onLeftPressed: moved(-1)
    Keys.onRightPressed: moved(1)

    background: Rectangle {
        radius: height / 2
        color: tab.here ? Theme.ink : "transparent"
        border.color: tab.visualFocus ? Theme.focus : tab.hovered ? Theme.edge : "transparent"
        border.width: tab.visualFocus ? 3 : 1
    }
    contentItem: InkText {
        text: tab.mark === "" ? tab.text : tab.mark
        color: tab.here ? Theme.paper : tab.small ? Theme.faint : Theme.ink
        font.pixelSize: tab.small && tab.mark === "" ? Theme.small : Theme.body
        font.weight: Font.Medium
        horizontalAlignment: Text.AlignHCenter
        verticalAlignment: Text.AlignVCenter
        Accessible.ignored: true
    }
}
