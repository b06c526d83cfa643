// SPDX-License-Identifier: GPL-3.0-or-later
// A layer of the click: its level, and whether it sounds at all.
import QtQuick
import QtQuick.Templates as T

Item {
    id: row

    required property int index
    required property string words
    required property real level
    required property string levelText
    required property bool muted
    required property bool canMute

    signal levelMoved(real level)
    signal muteTicked(bool muted)

    implicitHeight: Theme.touch

    InkText {
        id: name
        width: row.width * 0.3
        anchors.verticalCenter: parent.verticalCenter
        text: row.words
        font.weight: row.index === 0 ? Font.DemiBold : Font.Normal
        wrapMode: Text.WordWrap
        Accessible.ignored: true
    }
    T.Slider {
        id: slider
        anchors.left: name.right
        anchors.right: amount.left
        anchors.rightMargin: Theme.gap
        anchors.verticalCenter: parent.verticalCenter
        implicitHeight: Theme.touch
        from: 0
        to: 1
        stepSize: 0.05
        value: row.level
        onMoved: row.levelMoved(value)
        Accessible.role: Accessible.Slider
        Accessible.name: qsTrId("sound.level.spoken").arg(row.words)
        Accessible.description: row.levelText

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
                color: row.muted ? Theme.faint : Theme.accent
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
    InkText {
        id: amount
        anchors.right: mute.left
        anchors.rightMargin: Theme.gap
        anchors.verticalCenter: parent.verticalCenter
        width: 88
        text: row.muted ? qsTrId("sound.level.muted") : row.levelText
        color: Theme.faint
        Accessible.ignored: true
    }
    Tick {
        id: mute
        anchors.right: parent.right
        anchors.verticalCenter: parent.verticalCenter
        width: 90
        opacity: row.canMute ? 1 : 0
        enabled: row.canMute
        text: qsTrId("sound.level.mute")
        checked: row.muted
        Accessible.name: qsTrId("sound.level.mute.spoken").arg(row.words)
        onTicked: on => row.muteTicked(on)
    }
}
