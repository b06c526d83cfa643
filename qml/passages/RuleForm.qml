// SPDX-License-Identifier: GPL-3.0-or-later
// Where the tempo begins and ends, and what moves it.
import QtQuick
import QtQuick.Layouts
import Piolo

GridLayout {
    id: form

    required property PassageEditor editor

    readonly property bool notches: editor.draft["notches"] ?? false
    readonly property string unit: notches ? qsTrId("form.notches") : qsTrId("form.bpm")

    /// Two fields in a row.
    readonly property bool slim: width < 560

    columns: slim ? 2 : 4
    columnSpacing: Theme.gap
    rowSpacing: 12

    TempoCell {
        editor: form.editor
        name: "start"
        label: qsTrId("form.start")
    }
    TempoCell {
        editor: form.editor
        name: "target"
        label: qsTrId("form.target")
    }
    TempoCell {
        editor: form.editor
        name: "floor"
        label: qsTrId("form.floor")
        placeholder: form.editor.text.usualFloor
    }
    Choice {
        objectName: "field-notches"
        Layout.fillWidth: true
        Layout.preferredWidth: 1
        Layout.alignment: Qt.AlignTop
        label: qsTrId("form.step")
        options: [
            {value: false, text: qsTrId("form.bpm")},
            {value: true, text: qsTrId("form.notches")}
        ]
        value: form.notches
        onChosen: value => form.editor.set("notches", value)
    }
    FormCell {
        editor: form.editor
        name: "drop"
        label: qsTrId("form.drop")
    }
    FormCell {
        editor: form.editor
        name: "cleanRuns"
        label: qsTrId("form.clean-runs")
    }
    FormCell {
        editor: form.editor
        name: "climb"
        label: qsTrId("form.climb")
    }
    InkText {
        Layout.fillWidth: true
        Layout.preferredWidth: 1
        Layout.topMargin: 30
        Layout.alignment: Qt.AlignTop
        text: form.unit
        color: Theme.faint
    }
    Tick {
        objectName: "field-gentle"
        Layout.columnSpan: form.columns
        Layout.fillWidth: true
        text: qsTrId("form.gentle")
        enabled: !form.editor.readOnly
        checked: form.editor.draft["gentle"] ?? false
        onTicked: on => form.editor.set("gentle", on)
    }
}
