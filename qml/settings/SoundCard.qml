// SPDX-License-Identifier: GPL-3.0-or-later
// The sound of this machine: its output, its voice, its layers.
// Qt 6.4's linter does not see ids outside a delegate.
// qmllint disable unqualified
import QtQuick
import Piolo

SettingsCard {
    id: card

    required property SettingsModel settings

    Component.onCompleted: settings.sound.watching = true
    Component.onDestruction: settings.sound.watching = false

    title: qsTrId("sound.title")
    note: qsTrId("sound.level.hint")

    Choice {
        objectName: "voice"
        width: parent.width
        label: qsTrId("sound.voice")
        options: card.settings.sound.voices
        value: card.settings.sound.voice
        onChosen: value => card.settings.sound.voice = value
    }
    VolumeLine {
        width: parent.width
        sound: card.settings.sound
    }
    Fold {
        objectName: "moreLevels"
        width: parent.width
        title: qsTrId("sound.more")

        Repeater {
            model: card.settings.sound.layers

            LevelRow {
                width: parent.width
                visible: index > 0 // the first is the volume of everything
                onLevelMoved: level => card.settings.sound.layers.setLevel(index, level)
                onMuteTicked: muted => card.settings.sound.layers.setMuted(index, muted)
            }
        }
    }
    Choice {
        objectName: "device"
        width: parent.width
        label: qsTrId("sound.output")
        options: card.settings.sound.devices
        value: card.settings.sound.device
        onChosen: value => card.settings.sound.device = value
    }
    InkText {
        objectName: "soundLine"
        visible: text !== ""
        width: parent.width
        wrapMode: Text.Wrap
        text: card.settings.sound.soundLine
    }
    Stepper {
        objectName: "offset"
        width: parent.width
        label: qsTrId("sound.delay")
        from: -500
        to: 1000
        step: 10
        value: card.settings.sound.offsetMillis
        words: Formatter.millis(card.settings.sound.offsetMillis)
        onMoved: value => card.settings.sound.offsetMillis = value
    }
}
