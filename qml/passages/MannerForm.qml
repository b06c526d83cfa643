// SPDX-License-Identifier: GPL-3.0-or-later
// How the passage is played: articulation, rhythm and a note on fingering.
import QtQuick
import QtQuick.Layouts
import Piolo

GridLayout {
    id: form

    required property PassageEditor editor

    readonly property bool inGroups: (editor.draft["rhythm"] ?? 0) === 3

    columns: 3
    columnSpacing: Theme.gap
    rowSpacing: 12

    Choice {
        objectName: "field-articulation"
        Layout.fillWidth: true
        Layout.preferredWidth: 5
        Layout.alignment: Qt.AlignTop
        label: qsTrId("form.articulation")
        options: form.editor.choices.articulations
        value: form.editor.draft["articulation"]
        onChosen: value => form.editor.set("articulation", value)
    }
    Choice {
        objectName: "field-rhythm"
        Layout.fillWidth: true
        Layout.preferredWidth: 5
        Layout.alignment: Qt.AlignTop
        label: qsTrId("form.rhythm")
        options: form.editor.choices.rhythms
        value: form.editor.draft["rhythm"]
        onChosen: value => form.editor.set("rhythm", value)
    }
    FormCell {
        editor: form.editor
        Layout.preferredWidth: 4
        name: "group"
        label: qsTrId("form.group")
        enabled: form.inGroups
        opacity: enabled ? 1 : 0.6
    }
    FormCell {
        editor: form.editor
        Layout.columnSpan: 3
        name: "fingering"
        label: qsTrId("form.fingering")
        placeholder: qsTrId("form.fingering.example")
    }
}
