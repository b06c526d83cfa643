// SPDX-License-Identifier: GPL-3.0-or-later
// Pedals and MIDI switches: keys by what they send, a single pedal for everything, and its timing.
// Qt 6.4's linter does not see ids outside a delegate.
// qmllint disable unqualified
import QtQuick
import Piolo

SettingsCard {
    id: card

    required property SettingsModel settings
    required property KeyBindings keys
    property bool touched: false
    readonly property bool waiting: touched && keys.capturing === "pedal"

    signal touch
    signal showWanted(Item item)

    title: qsTrId("switch.title")
    note: qsTrId("switch.hint")

    Flow {
        width: parent.width
        spacing: 8
        Accessible.role: Accessible.Grouping
        Accessible.name: qsTrId("switch.sends")

        Repeater {
            model: card.keys.sets

            InkButton {
                required property var modelData

                objectName: "set-" + modelData.value
                text: modelData.text
                onClicked: {
                    card.touch();
                    card.keys.useSet(modelData.value);
                }
            }
        }
    }
    InkText {
        width: parent.width
        text: qsTrId("switch.one-pedal")
        color: Theme.faint
        wrapMode: Text.Wrap
    }
    Flow {
        width: parent.width
        spacing: 8

        InkButton {
            id: onePedal
            objectName: "onePedal"
            text: card.waiting && card.keys.midiLine === "" ? qsTrId("switch.press") : qsTrId("switch.use-pedal")
            ground: card.waiting && card.keys.midiLine === "" ? Theme.accentWash : Theme.card
            onClicked: {
                card.touch();
                card.keys.capture("pedal");
            }
        }
        InkButton {
            objectName: "oneMidi"
            text: card.waiting && card.keys.midiLine !== "" ? qsTrId("switch.press") : qsTrId("switch.use-midi")
            ground: card.waiting && card.keys.midiLine !== "" ? Theme.accentWash : Theme.card
            onClicked: {
                card.touch();
                card.keys.captureMidi("pedal");
            }
        }
    }
    KeyOutcome {
        width: parent.width
        visible: card.touched
        returnTo: onePedal
        onShowWanted: item => card.showWanted(item)
        bindings: card.keys
    }
    Flow {
        width: parent.width
        spacing: Theme.gap

        Stepper {
            objectName: "hold"
            width: Math.max(190, (parent.width - 2 * parent.spacing) / 3)
            label: qsTrId("switch.held")
            from: 300
            to: 3000
            step: 50
            value: card.settings.holdMillis
            words: Formatter.seconds(card.settings.holdMillis)
            onMoved: value => card.settings.holdMillis = value
        }
        Stepper {
            objectName: "twice"
            width: Math.max(190, (parent.width - 2 * parent.spacing) / 3)
            label: qsTrId("switch.twice")
            from: 150
            to: 1000
            step: 50
            value: card.settings.twiceMillis
            words: qsTrId("switch.millis").arg(card.settings.twiceMillis)
            onMoved: value => card.settings.twiceMillis = value
        }
        Stepper {
            objectName: "bounce"
            width: Math.max(190, (parent.width - 2 * parent.spacing) / 3)
            label: qsTrId("switch.bounce")
            from: 5
            to: 300
            step: 5
            value: card.settings.bounceMillis
            words: qsTrId("switch.millis").arg(card.settings.bounceMillis)
            onMoved: value => card.settings.bounceMillis = value
        }
    }
}
