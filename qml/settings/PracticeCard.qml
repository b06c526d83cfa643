// SPDX-License-Identifier: GPL-3.0-or-later
// How the drill goes: these settings travel with the practice folder.
import QtQuick
import Piolo

SettingsCard {
    id: card

    required property SettingsModel settings

    title: qsTrId("practice.title")
    note: settings.readOnly ? qsTrId("practice.read-only") : qsTrId("practice.hint")

    Stepper {
        objectName: "gap"
        width: parent.width
        enabled: !card.settings.readOnly
        label: qsTrId("practice.rest")
        from: 0
        to: 30000
        step: 500
        value: card.settings.gapMillis
        words: card.settings.gapMillis === 0 ? qsTrId("practice.rest.none") : Formatter.seconds(card.settings.gapMillis)
        onMoved: value => card.settings.gapMillis = value
    }
    Tick {
        objectName: "playOn"
        width: parent.width
        enabled: !card.settings.readOnly
        text: qsTrId("practice.play-on")
        checked: card.settings.playOn
        onTicked: on => card.settings.playOn = on
    }
    Stepper {
        objectName: "pauseAfter"
        width: parent.width
        enabled: !card.settings.readOnly
        label: qsTrId("practice.pause")
        from: 0
        to: 200
        step: 5
        value: card.settings.pauseAfterRuns
        words: card.settings.pauseAfterRuns === 0 ? qsTrId("practice.pause.never") : Formatter.runs(card.settings.pauseAfterRuns)
        onMoved: value => card.settings.pauseAfterRuns = value
    }
    Stepper {
        objectName: "secureDays"
        width: parent.width
        enabled: !card.settings.readOnly
        label: qsTrId("practice.secure-days")
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
        label: qsTrId("practice.reaction")
        from: 0
        to: 1000
        step: 50
        value: card.settings.reactionMillis
        words: qsTrId("practice.millis").arg(card.settings.reactionMillis)
        onMoved: value => card.settings.reactionMillis = value
    }
    Choice {
        objectName: "dayOpening"
        width: parent.width
        enabled: !card.settings.readOnly
        label: qsTrId("practice.day-opens")
        options: card.settings.dayOpenings
        value: card.settings.dayOpening
        onChosen: value => card.settings.dayOpening = value
    }
}
