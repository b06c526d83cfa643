// SPDX-License-Identifier: GPL-3.0-or-later
// What was taken back last, and a button that puts it back.
import QtQuick
import QtQuick.Layouts

RowLayout {
    id: line

    /// "Taken back: clean run at 92"; "" hides the line.
    property string text: ""

    signal putBackWanted

    visible: text !== ""
    spacing: 12

    InkText {
        Layout.fillWidth: true
        horizontalAlignment: Text.AlignRight
        text: line.text
        color: Theme.faint
        wrapMode: Text.Wrap
        maximumLineCount: 2
        elide: Text.ElideRight
        Accessible.role: Accessible.AlertMessage
        Accessible.ignored: line.text === ""
    }
    InkButton {
        objectName: "putBack"
        text: qsTrId("taken-back.put-back")
        Accessible.description: line.text
        onClicked: line.putBackWanted()
    }
    // Keeps words and button together in the middle.
    Item {
        Layout.fillWidth: true
        Layout.preferredWidth: 0
        visible: line.width > 600
    }
}
