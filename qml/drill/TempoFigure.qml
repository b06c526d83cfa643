// SPDX-License-Identifier: GPL-3.0-or-later
// The tempo of the next run, with one step down and up. While it is typed into, it can be tapped.
import QtQuick
import QtQuick.Layouts
import Piolo

ColumnLayout {
    id: figure

    required property DrillModel drill
    required property KeyBindings keys
    /// The height of the figure.
    property real size: 110
    /// There is no room for the words on the buttons.
    readonly property bool narrow: width < 460
    readonly property bool typing: input.activeFocus

    /// A tempo was typed.
    signal done()

    spacing: 8

    RowLayout {
        Layout.fillWidth: true
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
            id: input
            objectName: "drillTempo"
            tappable: true
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
    TapButton {
        objectName: "drillTap"
        Layout.alignment: Qt.AlignHCenter
        Layout.preferredWidth: Math.max(160, implicitWidth)
        visible: figure.typing
        // The keys for tapping work in the figure.
        focusPolicy: Qt.NoFocus
        activeFocusOnTab: false
        text: qsTrId("click.tap")
        key: figure.keys.shown.tap
        onBeaten: stamp => figure.drill.tapAt(stamp)
    }
}
