// SPDX-License-Identifier: GPL-3.0-or-later
// Which scales the grid shows.
import QtQuick
import QtQuick.Layouts
import Piolo

GridLayout {
    id: view

    required property ScaleChoices choices

    columns: width > 700 ? 4 : 2
    columnSpacing: 12
    rowSpacing: 8
    enabled: !choices.readOnly

    Choice {
        objectName: "scaleKind"
        Layout.fillWidth: true
        Layout.preferredWidth: 4
        bare: true
        label: qsTrId("scales.kind")
        options: view.choices.kinds
        value: view.choices.kind
        onChosen: value => view.choices.kind = value
    }
    Choice {
        objectName: "scaleRange"
        Layout.fillWidth: true
        Layout.preferredWidth: 3
        bare: true
        label: qsTrId("scales.range")
        options: view.choices.ranges
        value: view.choices.range
        onChosen: value => view.choices.range = value
    }
    Choice {
        objectName: "scalePattern"
        Layout.fillWidth: true
        Layout.preferredWidth: 3
        bare: true
        label: qsTrId("scales.pattern")
        options: view.choices.patterns
        value: view.choices.pattern
        onChosen: value => view.choices.pattern = value
    }
    Choice {
        objectName: "keyOrder"
        Layout.fillWidth: true
        Layout.preferredWidth: 3
        bare: true
        label: qsTrId("scales.order")
        prefix: qsTrId("scales.keys")
        options: view.choices.orders
        value: view.choices.order
        onChosen: value => view.choices.order = value
    }
}
