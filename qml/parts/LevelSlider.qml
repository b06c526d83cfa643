// SPDX-License-Identifier: GPL-3.0-or-later
// A level from nothing to all of it.
import QtQuick
import QtQuick.Templates as T

T.Slider {
    id: slider

    /// What it is the level of.
    property string words: ""
    property string levelText: ""
    property bool muted: false

    implicitWidth: 160
    implicitHeight: Theme.touch
    from: 0
    to: 1
    stepSize: 0.05
    Accessible.role: Accessible.Slider
    Accessible.name: words
    Accessible.description: levelText

    background: Rectangle {
        y: (slider.height - height) / 2
        x: slider.leftPadding
        width: slider.availableWidth
        height: 8
        radius: 4
        color: Theme.rung

        Rectangle {
            width: slider.visualPosition * parent.width
            height: parent.height
            radius: 4
            color: slider.muted ? Theme.faint : Theme.accent
        }
    }
    handle: Rectangle {
        x: slider.leftPadding + slider.visualPosition * (slider.availableWidth - width)
        y: (slider.height - height) / 2
        width: 24
        height: 24
        radius: 12
        color: Theme.card
        border.color: slider.visualFocus ? Theme.focus : Theme.ink
        border.width: slider.visualFocus ? 3 : 2
    }
}
