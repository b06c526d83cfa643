// SPDX-License-Identifier: GPL-3.0-or-later
// One line if something is wrong: sound, disk, or a read-only folder.
import QtQuick

Rectangle {
    id: line

    property string text: ""

    implicitHeight: text === "" ? 0 : Math.round(Theme.body * 2.25)
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
        maximumLineCount: 1
        text: "! " + line.text
        color: Theme.miss
        Accessible.ignored: true
    }
}
