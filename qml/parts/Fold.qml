// SPDX-License-Identifier: GPL-3.0-or-later
// A panel that is closed until it is wanted: its title, and what is set inside.
import QtQuick
import QtQuick.Templates as T

Column {
    id: fold

    property string title: ""
    /// What is set inside, shown while it is closed.
    property string summary: ""
    property bool open: false
    default property alias content: inside.data

    signal toggled

    spacing: open ? Theme.gap : 0

    T.Button {
        id: head
        objectName: fold.objectName === "" ? "" : fold.objectName + "-head"
        width: parent.width
        implicitHeight: Math.max(Theme.touch, implicitContentHeight + Theme.gap)
        text: fold.title
        hoverEnabled: true
        Accessible.role: Accessible.Button
        Accessible.name: (fold.open ? qsTrId("parts.fold.open") : qsTrId("parts.fold.closed")).arg(text)
        Accessible.description: fold.summary
        Keys.onReturnPressed: clicked()
        Keys.onEnterPressed: clicked()
        onClicked: {
            fold.open = !fold.open;
            fold.toggled();
        }

        background: Rectangle {
            radius: 8
            color: head.down || head.hovered ? Theme.accentWash : "transparent"
            border.color: head.visualFocus ? Theme.focus : "transparent"
            border.width: head.visualFocus ? 3 : 0
        }
        contentItem: InkText {
            leftPadding: 4
            rightPadding: 4
            verticalAlignment: Text.AlignVCenter
            text: (fold.open ? "▾  " : "▸  ") + fold.title + (fold.open || fold.summary === "" ? "" : "  ·  " + fold.summary)
            font.weight: Font.Medium
            wrapMode: Text.Wrap
            Accessible.ignored: true
        }
    }
    Column {
        id: inside
        width: parent.width
        visible: fold.open
        spacing: fold.spacing
    }
}
