// SPDX-License-Identifier: GPL-3.0-or-later
// Where the click sounds in a run; when folded, one line describes it.
// Qt 6.4's linter does not see the ids around a component.
// qmllint disable unqualified
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
        text: form.editor.text.clickSentence
        wrapMode: Text.Wrap
    }
    Tick {
        objectName: "clickOpen"
        text: qsTrId("click-form.change")
        checked: form.unfolded
        onTicked: on => form.unfolded = on
    }
    Kept {
        width: parent.width
        shown: form.unfolded || form.faulty
        sourceComponent: GridLayout {
            columns: form.width < 560 ? 2 : 4
            columnSpacing: Theme.gap
            rowSpacing: 12

            Choice {
                objectName: "field-clickOn"
                Layout.columnSpan: 2
                Layout.fillWidth: true
                Layout.preferredWidth: 2
                Layout.alignment: Qt.AlignTop
                label: qsTrId("click-form.on")
                options: form.editor.choices.clickPlaces
                value: form.editor.draft["clickOn"]
                onChosen: value => form.editor.set("clickOn", value)
            }
            FormCell {
                editor: form.editor
                name: "swing"
                label: qsTrId("click-form.swing")
                placeholder: qsTrId("click-form.straight")
            }
            Choice {
                objectName: "field-swung"
                Layout.fillWidth: true
                Layout.preferredWidth: 1
                Layout.alignment: Qt.AlignTop
                label: qsTrId("click-form.swung")
                options: form.editor.choices.swungNotes
                value: form.editor.draft["swung"]
                onChosen: value => form.editor.set("swung", value)
            }
            AccentRow {
                Layout.columnSpan: form.width < 560 ? 2 : 4
                Layout.fillWidth: true
                editor: form.editor
            }
            FormCell {
                editor: form.editor
                name: "barsOn"
                label: qsTrId("click-form.bars-on")
            }
            FormCell {
                editor: form.editor
                name: "barsOff"
                label: qsTrId("click-form.bars-off")
            }
            FormCell {
                editor: form.editor
                name: "silentBars"
                label: qsTrId("click-form.silent-bars")
            }
            FormCell {
                editor: form.editor
                name: "leftOutBeats"
                label: qsTrId("click-form.lost-beats")
            }
            FormCell {
                editor: form.editor
                Layout.columnSpan: 2
                Layout.preferredWidth: 2
                name: "breaths"
                label: qsTrId("click-form.breaths")
                placeholder: qsTrId("click-form.breaths.example")
            }
            FormCell {
                editor: form.editor
                name: "breathBelow"
                label: qsTrId("click-form.breath-below")
                placeholder: qsTrId("click-form.breath-below.any")
            }
            FormCell {
                editor: form.editor
                name: "seed"
                label: qsTrId("click-form.seed")
            }
            InkText {
                Layout.columnSpan: form.width < 560 ? 2 : 4
                Layout.fillWidth: true
                text: qsTrId("click-form.hint")
                color: Theme.faint
                font.pixelSize: Theme.small
                wrapMode: Text.Wrap
            }
        }
    }
}
