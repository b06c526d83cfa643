// SPDX-License-Identifier: GPL-3.0-or-later
// How the drill works: these settings are stored in the practice folder.
import QtQuick
import Piolo

SettingsCard {
    id: card

    required property SettingsModel settings

    title: qsTrId("practice.title")
    note: settings.practice.readOnly ? qsTrId("practice.read-only") : qsTrId("practice.hint")

    Stepper {
        objectName: "gap"
        width: parent.width
        enabled: !card.settings.practice.readOnly
        label: qsTrId("practice.rest")
        from: 0
        to: 30000
        step: 500
        value: card.settings.practice.gapMillis
        words: card.settings.practice.gapMillis === 0 ? qsTrId("practice.rest.none") : Formatter.seconds(card.settings.practice.gapMillis)
        onMoved: value => card.settings.practice.gapMillis = value
    }
    Tick {
        objectName: "playOn"
        width: parent.width
        enabled: !card.settings.practice.readOnly
        text: qsTrId("practice.play-on")
        checked: card.settings.practice.playOn
        onTicked: on => card.settings.practice.playOn = on
    }
    Stepper {
        objectName: "pauseAfter"
        width: parent.width
        enabled: !card.settings.practice.readOnly
        label: qsTrId("practice.pause")
        from: 0
        to: 200
        step: 5
        value: card.settings.practice.pauseAfterRuns
        words: card.settings.practice.pauseAfterRuns === 0 ? qsTrId("practice.pause.never") : Formatter.runs(card.settings.practice.pauseAfterRuns)
        onMoved: value => card.settings.practice.pauseAfterRuns = value
    }
    Stepper {
        objectName: "secureDays"
        width: parent.width
        enabled: !card.settings.practice.readOnly
        label: qsTrId("practice.secure-days")
        from: 1
        to: 30
        value: card.settings.practice.secureDays
        words: Formatter.days(card.settings.practice.secureDays)
        onMoved: value => card.settings.practice.secureDays = value
    }
    Stepper {
        objectName: "reaction"
        width: parent.width
        enabled: !card.settings.practice.readOnly
        label: qsTrId("practice.reaction")
        from: 0
        to: 1000
        step: 50
        value: card.settings.practice.reactionMillis
        words: qsTrId("practice.millis").arg(card.settings.practice.reactionMillis)
        onMoved: value => card.settings.practice.reactionMillis = value
    }
    Choice {
        objectName: "dayOpening"
        width: parent.width
        enabled: !card.settings.practice.readOnly
        label: qsTrId("practice.day-opens")
        options: card.settings.practice.dayOpenings
        value: card.settings.practice.dayOpening
        onChosen: value => card.settings.practice.dayOpening = value
    }
}
