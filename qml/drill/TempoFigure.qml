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
    InkText {
        Layout.fillWidth: true
        Layout.preferredWidth: 5
        Layout.preferredHeight: figure.size
        text: figure.drill.text.tempo
        font.pixelSize: Math.max(20, figure.size)
        font.weight: Font.Bold
        fontSizeMode: Text.Fit
        minimumPixelSize: 20
        horizontalAlignment: Text.AlignHCenter
        verticalAlignment: Text.AlignVCenter
        Accessible.name: figure.drill.text.tempoLine
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
