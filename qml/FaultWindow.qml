// SPDX-License-Identifier: GPL-3.0-or-later
// Why the program cannot start: shown in place of its window.
import QtQuick
import Piolo

Window {
    id: window

    /// "E301: FILE: what; what to do".
    required property string fault

    width: 560
    height: Math.max(220, words.implicitHeight + 4 * Theme.gap)
    minimumWidth: 320
    minimumHeight: 200
    visible: true
    title: qsTrId("window.name")
    color: Theme.paper

    Column {
        id: words
        anchors.fill: parent
        anchors.margins: 2 * Theme.gap
        spacing: Theme.gap

        InkText {
            width: parent.width
            text: qsTrId("start.failed")
            font.pixelSize: Theme.heading
            font.weight: Font.DemiBold
            wrapMode: Text.Wrap
            Accessible.role: Accessible.Heading
        }
        InkText {
            objectName: "startFault"
            width: parent.width
            text: window.fault
            wrapMode: Text.Wrap
            Accessible.role: Accessible.AlertMessage
        }
        InkButton {
            objectName: "closeFault"
            text: qsTrId("start.close")
            strong: true
            focus: true
            onClicked: window.close()
        }
    }
}
