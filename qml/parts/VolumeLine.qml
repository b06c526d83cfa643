// SPDX-License-Identifier: GPL-3.0-or-later
// The volume of everything that Piolo plays, in one line. A change is heard a moment later.
import QtQuick
import Piolo

Item {
    id: line

    required property SoundSettings sound

    implicitWidth: 320
    implicitHeight: Theme.touch

    InkText {
        id: name
        anchors.verticalCenter: parent.verticalCenter
        text: qsTrId("sound.volume")
        font.weight: Font.DemiBold
        Accessible.ignored: true
    }
    LevelSlider {
        objectName: "volume"
        anchors.left: name.right
        anchors.leftMargin: Theme.gap
        anchors.right: amount.left
        anchors.rightMargin: Theme.gap
        words: qsTrId("sound.volume")
        levelText: line.sound.volumeText
        value: line.sound.volume
        onMoved: line.sound.volume = value
    }
    InkText {
        id: amount
        anchors.right: parent.right
        anchors.verticalCenter: parent.verticalCenter
        width: Math.max(88, implicitWidth)
        text: line.sound.volumeText
        color: Theme.faint
        Accessible.ignored: true
    }
}
