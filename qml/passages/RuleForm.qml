// SPDX-License-Identifier: GPL-3.0-or-later
// Where the tempo begins and ends, and what moves it.
import QtQuick
import QtQuick.Layouts
import Piolo

GridLayout {
    id: form

    required property PassageEditor editor

    readonly property bool notches: editor.draft["notches"] ?? false
    readonly property string unit: notches ? qsTr("notches") : qsTr("BPM")

    columns: 4
    columnSpacing: Theme.gap
    rowSpacing: 12

    FormCell {
        editor: form.editor
        name: "start"
        label: qsTr("Start at")
    }
    FormCell {
        editor: form.editor
        name: "target"
        label: qsTr("Target")
    }
    FormCell {
        editor: form.editor
        name: "floor"
        label: qsTr("Never below")
        placeholder: form.editor.usualFloor
    }
    Choice {
        objectName: "field-notches"
        Layout.fillWidth: true
        Layout.preferredWidth: 1
        Layout.alignment: Qt.AlignTop
        label: qsTr("Steps in")
        options: [
            {value: false, text: qsTr("BPM")},
            {value: true, text: qsTr("notches")}
        ]
        value: form.notches
        onChosen: value => form.editor.set("notches", value)
    }
    FormCell {
        editor: form.editor
        name: "drop"
        label: qsTr("A miss drops")
    }
    FormCell {
        editor: form.editor
        name: "cleanRuns"
        label: qsTr("Clean in a row")
    }
    FormCell {
        editor: form.editor
        name: "climb"
        label: qsTr("then climb")
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
        Layout.columnSpan: 4
        Layout.fillWidth: true
        text: qsTr("Gentle near the target: a miss drops one climb there; at the target only the second in a row drops")
        enabled: !form.editor.readOnly
        checked: form.editor.draft["gentle"] ?? false
        onTicked: on => form.editor.set("gentle", on)
    }
}
