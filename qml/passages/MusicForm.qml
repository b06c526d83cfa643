// SPDX-License-Identifier: GPL-3.0-or-later
// What is played: bars, meter, beat, and what surrounds a run.
import QtQuick
import QtQuick.Layouts
import Piolo

GridLayout {
    id: form

    required property PassageEditor editor

    readonly property bool open: editor.draft["openEnded"] ?? false

    /// Two fields in a row.
    readonly property bool slim: width < 560

    columns: slim ? 2 : 4
    columnSpacing: Theme.gap
    rowSpacing: 12

    FormCell {
        editor: form.editor
        Layout.preferredWidth: 7
        name: "firstBar"
        label: qsTrId("form.first-bar")
    }
    FormCell {
        editor: form.editor
        Layout.preferredWidth: 9
        name: "bars"
        label: qsTrId("form.bars")
        enabled: !form.open
        placeholder: form.open ? qsTrId("form.bars.open") : ""
        opacity: enabled ? 1 : 0.6
    }
    Tick {
        objectName: "field-openEnded"
        Layout.columnSpan: 2
        Layout.fillWidth: true
        Layout.preferredWidth: 20
        Layout.alignment: Qt.AlignTop
        Layout.topMargin: form.slim ? 0 : 21
        text: qsTrId("form.open-ended")
        enabled: !form.editor.readOnly
        checked: form.open
        onTicked: on => form.editor.set("openEnded", on)
    }
    FormCell {
        editor: form.editor
        Layout.preferredWidth: 7
        name: "meter"
        label: qsTrId("form.meter")
    }
    FormCell {
        editor: form.editor
        Layout.preferredWidth: 9
        name: "groups"
        label: qsTrId("form.groups")
        placeholder: form.editor.text.usualGroups === "" ? qsTrId("form.groups.none") : form.editor.text.usualGroups
    }
    Choice {
        objectName: "field-beat"
        Layout.fillWidth: true
        Layout.preferredWidth: 10
        Layout.alignment: Qt.AlignTop
        label: qsTrId("form.beat")
        options: form.editor.choices.beats
        value: form.editor.choices.beat
        fault: form.editor.faults["beat"] ?? ""
        onChosen: value => form.editor.set("beat", value)
    }
    Choice {
        objectName: "field-subdivision"
        Layout.fillWidth: true
        Layout.preferredWidth: 11
        Layout.alignment: Qt.AlignTop
        label: qsTrId("form.subdivision")
        options: form.editor.choices.subdivisions
        value: form.editor.draft["subdivision"]
        onChosen: value => form.editor.set("subdivision", value)
    }
    FormCell {
        editor: form.editor
        Layout.preferredWidth: 7
        name: "pickup"
        label: qsTrId("form.pick-up")
        placeholder: qsTrId("form.none")
    }
    FormCell {
        editor: form.editor
        Layout.preferredWidth: 9
        name: "countIn"
        label: qsTrId("form.count-in")
    }
    FormCell {
        editor: form.editor
        Layout.preferredWidth: 10
        name: "breath"
        label: qsTrId("form.breath")
    }
    Tick {
        objectName: "field-landing"
        Layout.fillWidth: true
        Layout.preferredWidth: 10
        Layout.alignment: Qt.AlignTop
        Layout.topMargin: 21
        text: qsTrId("form.landing")
        enabled: !form.editor.readOnly
        checked: form.editor.draft["landing"] ?? false
        onTicked: on => form.editor.set("landing", on)
    }
}
