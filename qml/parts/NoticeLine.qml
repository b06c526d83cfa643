// SPDX-License-Identifier: GPL-3.0-or-later
// What is wrong: sound, disk, or a read-only folder. One line, or two where one is too short.
import QtQuick

Rectangle {
    id: line

    property string text: ""
    /// The most lines: 1 or 2.
    property int lines: 2

    implicitHeight: text === "" ? 0 : Math.round(words.contentHeight + Theme.body)
    visible: text !== ""
    color: Theme.missWash
    Accessible.role: Accessible.AlertMessage
    Accessible.name: text
    Accessible.ignored: text === ""

    InkText {
        id: words
        anchors.left: parent.left
        anchors.leftMargin: Theme.margin
        anchors.right: parent.right
        anchors.rightMargin: Theme.margin
        anchors.verticalCenter: parent.verticalCenter
        elide: Text.ElideRight
        maximumLineCount: line.lines
        wrapMode: Text.Wrap
        text: "! " + line.text
        color: Theme.miss
        Accessible.ignored: true
    }
}
