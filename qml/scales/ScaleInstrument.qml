// SPDX-License-Identifier: GPL-3.0-or-later
// The instrument for which scales are written, its range, and the random order of keys.
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
        title: qsTrId("scales.instrument.title")
        note: side.choices.readOnly ? qsTrId("scales.instrument.read-only") : qsTrId("scales.instrument.hint")

        Choice {
            id: instrument
            objectName: "instrument"
            width: parent.width
            enabled: !side.choices.readOnly
            label: qsTrId("scales.instrument.name")
            prompt: qsTrId("scales.instrument.choose")
            options: side.choices.instruments
            value: side.choices.instrument
            onChosen: value => side.choices.instrument = value
        }
        Row {
            id: notes
            width: parent.width
            visible: side.choices.ready
            spacing: 12

            Choice {
                objectName: "lowestNote"
                width: (notes.width - notes.spacing) / 2
                enabled: !side.choices.readOnly
                label: qsTrId("scales.instrument.lowest")
                options: side.choices.lowestNotes
                value: side.choices.lowest
                onChosen: value => side.choices.lowest = value
            }
            Choice {
                objectName: "highestNote"
                width: (notes.width - notes.spacing) / 2
                enabled: !side.choices.readOnly
                label: qsTrId("scales.instrument.highest")
                options: side.choices.highestNotes
                value: side.choices.highest
                onChosen: value => side.choices.highest = value
            }
        }
        InkText {
            width: parent.width
            visible: side.choices.ready
            text: qsTrId("scales.instrument.octave-hint")
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
                text: qsTrId("scales.instrument.redraw")
                onClicked: side.choices.drawAgain()
            }
            InkButton {
                objectName: "toGrid"
                Layout.fillWidth: true
                Layout.preferredWidth: 1
                strong: true
                text: qsTrId("scales.instrument.to-grid")
                onClicked: side.done()
            }
        }
    }
}
