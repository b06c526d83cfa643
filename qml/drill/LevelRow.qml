// SPDX-License-Identifier: GPL-3.0-or-later
// A layer of the click: its level, and whether it sounds at all.
import QtQuick

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

    /// The level is below what it belongs to, for want of width.
    readonly property bool stacked: width < 460

    implicitHeight: Theme.touch + (stacked ? name.implicitHeight : 0)

    InkText {
        id: name
        width: row.width * (row.stacked ? 1 : 0.3)
        y: row.stacked ? 4 : (row.height - height) / 2
        text: row.words
        wrapMode: Text.WordWrap
        Accessible.ignored: true
    }
    LevelSlider {
        x: row.stacked ? 0 : name.width
        y: row.height - height
        width: amount.x - x - Theme.gap
        objectName: "level-" + row.index
        words: qsTrId("sound.level.spoken").arg(row.words)
        levelText: row.levelText
        muted: row.muted
        value: row.level
        onMoved: row.levelMoved(value)
    }
    InkText {
        id: amount
        anchors.right: mute.left
        anchors.rightMargin: Theme.gap
        y: row.height - (Theme.touch + height) / 2
        width: 88
        text: row.muted ? qsTrId("sound.level.muted") : row.levelText
        color: Theme.faint
        Accessible.ignored: true
    }
    Tick {
        id: mute
        anchors.right: parent.right
        y: row.height - height
        width: 90
        opacity: row.canMute ? 1 : 0
        enabled: row.canMute
        text: qsTrId("sound.level.mute")
        checked: row.muted
        Accessible.name: qsTrId("sound.level.mute.spoken").arg(row.words)
        onTicked: on => row.muteTicked(on)
    }
}
