// SPDX-License-Identifier: GPL-3.0-or-later
// What a key does, the keys that do it, and a button that waits for another one.
import QtQuick

Item {
    id: row

    required property string action
    required property string words
    required property string keys
    property bool waiting: false

    signal captureWanted(string action)

    implicitHeight: Theme.touch + 8

    Words {
        id: name
        width: row.width * 0.42
        anchors.verticalCenter: parent.verticalCenter
        text: row.words
        wrapMode: Text.Wrap
        maximumLineCount: 2
        elide: Text.ElideRight
    }
    Words {
        anchors.left: name.right
        anchors.leftMargin: 12
        anchors.right: add.left
        anchors.rightMargin: 8
        anchors.verticalCenter: parent.verticalCenter
        text: row.keys
        font.weight: Font.DemiBold
        wrapMode: Text.Wrap
        maximumLineCount: 2
        elide: Text.ElideRight
    }
    InkButton {
        id: add
        objectName: "bind-" + row.action
        anchors.right: parent.right
        anchors.verticalCenter: parent.verticalCenter
        width: 140
        text: row.waiting ? qsTr("Press a key…") : qsTr("Add a key")
        ground: row.waiting ? Theme.accentWash : Theme.card
        Accessible.name: row.waiting ? qsTr("%1: press a key now, Esc gives up").arg(row.words) : qsTr("%1: add a key").arg(row.words)
        onClicked: row.captureWanted(row.action)
    }
}
