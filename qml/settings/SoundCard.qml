// SPDX-License-Identifier: GPL-3.0-or-later
// The sound of this machine: where it comes out, its voice, its layers.
// Qt 6.4's linter does not see the ids around a delegate.
// qmllint disable unqualified
import QtQuick
import Piolo

SettingsCard {
    id: card

    required property SettingsModel settings

    Component.onCompleted: settings.watching = true
    Component.onDestruction: settings.watching = false

    title: qsTrId("sound.title")
    note: qsTrId("sound.level.hint")

    Choice {
        objectName: "voice"
        width: parent.width
        label: qsTrId("sound.voice")
        options: card.settings.voices
        value: card.settings.voice
        onChosen: value => card.settings.voice = value
    }
    Column {
        width: parent.width

        Repeater {
            model: card.settings.layers

            LevelRow {
                width: parent.width
                onLevelMoved: level => card.settings.layers.setLevel(index, level)
                onMuteTicked: muted => card.settings.layers.setMuted(index, muted)
            }
        }
    }
    Choice {
        objectName: "device"
        width: parent.width
        label: qsTrId("sound.output")
        options: card.settings.devices
        value: card.settings.device
        onChosen: value => card.settings.device = value
    }
    InkText {
        objectName: "soundLine"
        width: parent.width
        wrapMode: Text.Wrap
        text: card.settings.soundLine
    }
    Stepper {
        objectName: "offset"
        width: parent.width
        label: qsTrId("sound.delay")
        from: -500
        to: 1000
        step: 10
        value: card.settings.offsetMillis
        words: Formatter.millis(card.settings.offsetMillis)
        onMoved: value => card.settings.offsetMillis = value
    }
}
