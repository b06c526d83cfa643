// SPDX-License-Identifier: GPL-3.0-or-later
// The tempo of the next run, with one step down and up.
import QtQuick
import QtQuick.Layouts
import Piolo

RowLayout {
    id: figure

    required property DrillModel drill
    required property KeyBindings keys
    /// The height of the figure.
    property real size: 110
    /// There is no room for the words on the buttons.
    readonly property bool narrow: width < 460

    /// A tempo was typed.
    signal done()

    spacing: 12

    InkButton {
        objectName: "slower"
        Layout.fillWidth: true
        Layout.preferredWidth: 3
        Layout.preferredHeight: 72
        text: figure.narrow ? "" : qsTrId("drill.slower")
        mark: "−"
        Accessible.name: qsTrId("parts.name-key").arg(qsTrId("drill.slower")).arg(key)
        key: figure.keys.shown.slower
        onClicked: figure.drill.slower()
    }
    TempoInput {
        objectName: "drillTempo"
        Layout.fillWidth: true
        Layout.preferredWidth: 5
        Layout.preferredHeight: figure.size
        tempo: figure.drill.text.tempo
        Accessible.name: qsTrId("click.tempo")
        Accessible.description: figure.drill.text.tempoLine
        onTyped: tempo => figure.drill.typeTempo(tempo)
        onDone: figure.done()
    }
    InkButton {
        objectName: "faster"
        Layout.fillWidth: true
        Layout.preferredWidth: 3
        Layout.preferredHeight: 72
        text: figure.narrow ? "" : qsTrId("drill.faster")
        mark: "+"
        Accessible.name: qsTrId("parts.name-key").arg(qsTrId("drill.faster")).arg(key)
        key: figure.keys.shown.faster
        onClicked: figure.drill.faster()
    }
}
