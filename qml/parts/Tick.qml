// SPDX-License-Identifier: GPL-3.0-or-later
// A check box with its text.
import QtQuick
import QtQuick.Templates as T

T.CheckBox {
    id: tick

    signal ticked(bool on)

    implicitWidth: implicitContentWidth + 2
    implicitHeight: Math.max(Theme.touch, implicitContentHeight)
    onToggled: ticked(checked)
    Accessible.role: Accessible.CheckBox
    Accessible.name: text
    Accessible.checked: checked

    indicator: Rectangle {
        y: (tick.height - height) / 2
        width: 24
        height: 24
        radius: 6
        color: tick.checked ? Theme.ink : Theme.card
        border.color: tick.visualFocus ? Theme.focus : Theme.faint
        border.width: tick.visualFocus ? 3 : 1

        InkText {
            anchors.centerIn: parent
            visible: tick.checked
            text: "✓"
            color: Theme.paper
            font.weight: Font.Bold
            Accessible.ignored: true
        }
    }
    contentItem: InkText {
        leftPadding: 34
        verticalAlignment: Text.AlignVCenter
        text: tick.text
        wrapMode: Text.Wrap
        color: tick.enabled ? Theme.ink : Theme.faint
        Accessible.ignored: true
    }
}
