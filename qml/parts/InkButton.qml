// SPDX-License-Identifier: GPL-3.0-or-later
// A button with its text and a second, smaller line (the key that does the same).
import QtQuick
import QtQuick.Templates as T

T.Button {
    id: button

    property string key: ""
    property string mark: ""
    property color ground: Theme.card
    property color line: Theme.edge
    property color ink: Theme.ink
    property int size: Theme.body
    property bool strong: false
    /// A text that is too long is cut off and does not wrap.
    property bool oneLine: false

    implicitWidth: Math.max(Theme.touch, implicitContentWidth + 2 * Theme.gap)
    implicitHeight: Math.max(Theme.touch, implicitContentHeight + Theme.gap)
    hoverEnabled: true
    opacity: enabled ? 1 : 0.5

    Accessible.name: key === "" ? text : qsTrId("parts.name-key").arg(text).arg(key)
    Accessible.role: Accessible.Button
    Keys.onReturnPressed: clicked()
    Keys.onEnterPressed: clicked()

    background: Rectangle {
        radius: Theme.radius
        color: button.down ? Theme.accentWash : button.strong ? Theme.ink : button.ground
        border.color: button.visualFocus ? Theme.focus : button.hovered ? button.ink : button.line
        border.width: button.visualFocus ? 3 : button.hovered ? 2 : 1
    }

    contentItem: InkLabel {
        text: button.text
        mark: button.mark
        key: button.key
        size: button.size
        oneLine: button.oneLine
        ink: button.strong && !button.down ? Theme.paper : button.ink
    }
}
