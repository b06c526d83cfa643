// SPDX-License-Identifier: GPL-3.0-or-later
// How the drill goes: these settings travel with the practice folder.
import QtQuick
import Piolo

SettingsCard {
    id: card

    required property SettingsModel settings

    title: qsTr("Practice")
    note: settings.readOnly ? qsTr("Another window writes to this practice folder: these cannot be changed here.") : qsTr("These travel with the practice folder.")

    Stepper {
        objectName: "gap"
        width: parent.width
        enabled: !card.settings.readOnly
        label: qsTr("After a miss, breathe and read for at least")
        from: 0
        to: 30000
        step: 500
        value: card.settings.gapMillis
        words: card.settings.gapMillis === 0 ? qsTr("no pause") : Formatter.seconds(card.settings.gapMillis)
        onMoved: value => card.settings.gapMillis = value
    }
    Tick {
        objectName: "playOn"
        width: parent.width
        enabled: !card.settings.readOnly
        text: qsTr("Play on after a miss: the run goes to its end and drops once")
        checked: card.settings.playOn
        onTicked: on => card.settings.playOn = on
    }
    Stepper {
        objectName: "pauseAfter"
        width: parent.width
        enabled: !card.settings.readOnly
        label: qsTr("Without a key, pause and ask after")
        from: 0
        to: 200
        step: 5
        value: card.settings.pauseAfterRuns
        words: card.settings.pauseAfterRuns === 0 ? qsTr("never") : Formatter.runs(card.settings.pauseAfterRuns)
        onMoved: value => card.settings.pauseAfterRuns = value
    }
    Stepper {
        objectName: "secureDays"
        width: parent.width
        enabled: !card.settings.readOnly
        label: qsTr("A passage is secure when it was secure on")
        from: 1
        to: 30
        value: card.settings.secureDays
        words: Formatter.days(card.settings.secureDays)
        onMoved: value => card.settings.secureDays = value
    }
    Stepper {
        objectName: "reaction"
        width: parent.width
        enabled: !card.settings.readOnly
        label: qsTr("From a slip to the key (a guess: set your own)")
        from: 0
        to: 1000
        step: 50
        value: card.settings.reactionMillis
        words: qsTr("%1 ms").arg(card.settings.reactionMillis)
        onMoved: value => card.settings.reactionMillis = value
    }
    Choice {
        objectName: "dayOpening"
        width: parent.width
        enabled: !card.settings.readOnly
        label: qsTr("A new day begins")
        options: card.settings.dayOpenings
        value: card.settings.dayOpening
        onChosen: value => card.settings.dayOpening = value
    }
}
