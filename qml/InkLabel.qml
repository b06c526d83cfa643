// SPDX-License-Identifier: GPL-3.0-or-later
// What stands on a button: a sign, its words, and below them the key that does the same.
import QtQuick

Item {
    id: label

    property string text: ""
    property string mark: ""
    property string key: ""
    property int size: Theme.body
    property color ink: Theme.ink

    implicitWidth: words.implicitWidth
    implicitHeight: words.implicitHeight

    Column {
        id: words
        anchors.centerIn: parent
        width: Math.min(implicitWidth, label.width)
        spacing: 2

        Row {
            anchors.horizontalCenter: parent.horizontalCenter
            spacing: 10

            Words {
                visible: text !== ""
                text: label.mark
                color: label.ink
                font.pixelSize: label.size
                Accessible.ignored: true
            }
            Words {
                text: label.text
                color: label.ink
                font.pixelSize: label.size
                font.weight: Font.DemiBold
                Accessible.ignored: true
            }
        }
        Words {
            anchors.horizontalCenter: parent.horizontalCenter
            width: Math.min(implicitWidth, label.width)
            elide: Text.ElideRight
            visible: text !== ""
            text: label.key
            color: label.ink
            font.pixelSize: Theme.small
            Accessible.ignored: true
        }
    }
}
