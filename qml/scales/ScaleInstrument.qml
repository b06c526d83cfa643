// SPDX-License-Identifier: GPL-3.0-or-later
// The instrument that scales are written for, its range, and the lot for the order of keys.
import QtQuick
import QtQuick.Layouts
import Piolo

Item {
    id: side

    required property ScaleChoices choices

    signal done()

    onVisibleChanged: if (visible) instrument.takeKeys()
    Component.onCompleted: if (visible) instrument.takeKeys()

    SettingsCard {
        id: card
        width: Math.min(parent.width, 640)
        title: qsTr("Your instrument")
        note: side.choices.readOnly ? qsTr("Another window writes to this practice folder: these cannot be changed here.") : qsTr("Scales are written for it, in its clef and range. This travels with the practice folder.")

        Choice {
            id: instrument
            objectName: "instrument"
            width: parent.width
            enabled: !side.choices.readOnly
            label: qsTr("Instrument")
            prompt: qsTr("Choose yours")
            options: side.choices.instruments
            value: side.choices.instrument
            onChosen: value => side.choices.instrument = value
        }
        RowLayout {
            width: parent.width
            visible: side.choices.ready
            spacing: 12

            Choice {
                objectName: "lowestNote"
                Layout.fillWidth: true
                Layout.preferredWidth: 1
                enabled: !side.choices.readOnly
                label: qsTr("Lowest note, as written")
                options: side.choices.lowestNotes
                value: side.choices.lowest
                onChosen: value => side.choices.lowest = value
            }
            Choice {
                objectName: "highestNote"
                Layout.fillWidth: true
                Layout.preferredWidth: 1
                enabled: !side.choices.readOnly
                label: qsTr("Highest note, as written")
                options: side.choices.highestNotes
                value: side.choices.highest
                onChosen: value => side.choices.highest = value
            }
        }
        InkText {
            width: parent.width
            visible: side.choices.ready
            text: qsTr("Octave 4 begins at middle C. A saxophone with a high F♯ key, a baritone with a low A, notes above the usual range: set what you play.")
            color: Theme.faint
            font.pixelSize: Theme.small
            wrapMode: Text.WordWrap
        }
        RowLayout {
            width: parent.width
            visible: side.choices.ready
            spacing: 12

            InkButton {
                objectName: "drawAgain"
                Layout.fillWidth: true
                Layout.preferredWidth: 1
                enabled: !side.choices.readOnly
                text: qsTr("Draw another order of keys")
                onClicked: side.choices.drawAgain()
            }
            InkButton {
                objectName: "toGrid"
                Layout.fillWidth: true
                Layout.preferredWidth: 1
                strong: true
                text: qsTr("To the grid")
                onClicked: side.done()
            }
        }
    }
}
