// SPDX-License-Identifier: GPL-3.0-or-later
// Where the click sounds inside a run: folded away, one line says what it does.
import QtQuick
import QtQuick.Layouts
import Piolo

Column {
    id: form

    required property PassageEditor editor
    property bool unfolded: false

    readonly property var faults: editor.faults
    readonly property bool faulty: "swing" in faults || "barsOn" in faults || "barsOff" in faults
        || "silentBars" in faults || "leftOutBeats" in faults || "seed" in faults || "breaths" in faults
        || "breathBelow" in faults

    spacing: 12

    InkText {
        objectName: "clickSentence"
        width: parent.width
        text: form.editor.clickSentence
        wrapMode: Text.Wrap
    }
    Tick {
        objectName: "clickOpen"
        text: qsTr("Change where the click sounds")
        checked: form.unfolded
        onTicked: on => form.unfolded = on
    }
    GridLayout {
        width: parent.width
        visible: form.unfolded || form.faulty
        columns: 4
        columnSpacing: Theme.gap
        rowSpacing: 12

        Choice {
            objectName: "field-clickOn"
            Layout.columnSpan: 2
            Layout.fillWidth: true
            Layout.preferredWidth: 2
            Layout.alignment: Qt.AlignTop
            label: qsTr("Click on")
            options: form.editor.clickPlaces
            value: form.editor.draft["clickOn"]
            onChosen: value => form.editor.set("clickOn", value)
        }
        FormCell {
            editor: form.editor
            name: "swing"
            label: qsTr("Swing")
            placeholder: qsTr("straight")
        }
        Choice {
            objectName: "field-swung"
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            Layout.alignment: Qt.AlignTop
            label: qsTr("Swung notes")
            options: form.editor.swungNotes
            value: form.editor.draft["swung"]
            onChosen: value => form.editor.set("swung", value)
        }
        AccentRow {
            Layout.columnSpan: 4
            Layout.fillWidth: true
            editor: form.editor
        }
        FormCell {
            editor: form.editor
            name: "barsOn"
            label: qsTr("Bars with click")
        }
        FormCell {
            editor: form.editor
            name: "barsOff"
            label: qsTr("Bars without")
        }
        FormCell {
            editor: form.editor
            name: "silentBars"
            label: qsTr("Silent bars, %")
        }
        FormCell {
            editor: form.editor
            name: "leftOutBeats"
            label: qsTr("Lost beats, %")
        }
        FormCell {
            editor: form.editor
            Layout.columnSpan: 2
            Layout.preferredWidth: 2
            name: "breaths"
            label: qsTr("Wait for breath before")
            placeholder: qsTr("43, 45:3, 47:1+2")
        }
        FormCell {
            editor: form.editor
            name: "breathBelow"
            label: qsTr("Only below")
            placeholder: qsTr("any tempo")
        }
        FormCell {
            editor: form.editor
            name: "seed"
            label: qsTr("Chance number")
        }
        InkText {
            Layout.columnSpan: 4
            Layout.fillWidth: true
            text: qsTr("The bars go on while the click is silent. Breath: bar, bar:beat, and +beats to wait. Another chance number, other silent bars and beats.")
            color: Theme.faint
            font.pixelSize: Theme.small
            wrapMode: Text.Wrap
        }
    }
}
