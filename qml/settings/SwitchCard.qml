// SPDX-License-Identifier: GPL-3.0-or-later
// Pedals and MIDI switches: keys by what they send, one pedal for all, and how it is read.
// Qt 6.4's linter does not see the ids around a delegate.
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

    title: qsTr("Pedals and switches")
    note: qsTr("Most pedals act as a keyboard. What does yours send? Your keys are set to match; MIDI switches stay as they are.")

    Flow {
        width: parent.width
        spacing: 8
        Accessible.role: Accessible.Grouping
        Accessible.name: qsTr("What the pedal sends")

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
        text: qsTr("One pedal alone does everything: a press starts, and marks a miss while the click runs; two presses take back; held, it stops the click, and while stopped it opens the next passage.")
        color: Theme.faint
        wrapMode: Text.Wrap
    }
    Flow {
        width: parent.width
        spacing: 8

        InkButton {
            id: onePedal
            objectName: "onePedal"
            text: card.waiting && card.keys.midiLine === "" ? qsTr("Press it now (Esc gives up)") : qsTr("Use one pedal for all")
            ground: card.waiting && card.keys.midiLine === "" ? Theme.accentWash : Theme.card
            onClicked: {
                card.touch();
                card.keys.capture("pedal");
            }
        }
        InkButton {
            objectName: "oneMidi"
            text: card.waiting && card.keys.midiLine !== "" ? qsTr("Press it now (Esc gives up)") : qsTr("Use one MIDI switch for all")
            ground: card.waiting && card.keys.midiLine !== "" ? Theme.accentWash : Theme.card
            onClicked: {
                card.touch();
                card.keys.captureMidi("pedal");
            }
        }
    }
    KeyTelling {
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
            label: qsTr("Held, when it is down for")
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
            label: qsTr("Two presses, within")
            from: 150
            to: 1000
            step: 50
            value: card.settings.twiceMillis
            words: qsTr("%1 ms").arg(card.settings.twiceMillis)
            onMoved: value => card.settings.twiceMillis = value
        }
        Stepper {
            objectName: "bounce"
            width: Math.max(190, (parent.width - 2 * parent.spacing) / 3)
            label: qsTr("It bounces: again within")
            from: 5
            to: 300
            step: 5
            value: card.settings.bounceMillis
            words: qsTr("%1 ms").arg(card.settings.bounceMillis)
            onMoved: value => card.settings.bounceMillis = value
        }
    }
}
