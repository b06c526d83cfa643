// SPDX-License-Identifier: GPL-3.0-or-later
// A reminder to rest after playing for a long time.
import QtQuick
import QtQuick.Layouts

Card {
    id: note

    signal read()

    implicitHeight: row.implicitHeight + 20
    color: Theme.accentWash

    RowLayout {
        id: row
        anchors.fill: parent
        anchors.margins: 10
        anchors.leftMargin: Theme.gap
        spacing: Theme.gap

        InkText {
            Layout.fillWidth: true
            wrapMode: Text.WordWrap
            text: qsTrId("rest.note")
        }
        InkButton {
            text: qsTrId("rest.read")
            onClicked: note.read()
        }
    }
}
